import { createContext } from 'react';
import type { MeasureOfWork } from '../../actions';
import type { ThenAndNow } from '../../engine/change';
import { measuredText } from '../parts/measuredText';

/** What was measured on photos of one of the two rounds, of a zone and kind, in words. */
export type MeasuredThen = (which: 'earlier' | 'later', zone: string, kind: string) => readonly string[];

export const MeasuredContext = createContext<MeasuredThen>(() => []);

/** Figures of whole zones only: a sentinel square says nothing of the zone around it. They stand beside, and no verdict uses them. */
export const measuredBy =
  (answer: ThenAndNow, measures: readonly MeasureOfWork[] = []): MeasuredThen =>
  (which, zone, kind) =>
    measures
      .filter(({ measure: { body } }) => body.about === zone && body.kind === kind)
      .filter(({ measure: { body } }) => body.round === answer[which].thing)
      .map(measuredText);
