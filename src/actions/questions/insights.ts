import type { NeedOf } from '../../engine/condition';
import type { SculptureRecord } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { thingsOfKind } from '../theThing';
import { type Figures, keptFigures, workOut } from './keptSummaries';
import { live } from './live';

/** What was worked out for one work. */
export interface Insights {
  /** All that is not of a round, the latest round whole, of the others their days. */
  readonly record: SculptureRecord;
  /** The latest round scored and classed; null where nobody has looked yet. */
  readonly need: NeedOf | null;
}

/** What was worked out for the whole collection. */
export interface CollectionInsights {
  readonly perWork: readonly Insights[];
  /** Works whose figures are still being worked out. */
  readonly workingOut: number;
}

const insights = ({ first, second }: Figures): Insights => ({ record: first.record, need: second.need });

/** Holds, trends, advice and classes of one work; undefined while they are worked out, null where the work is not here. */
export const insightsOf = (desk: Desk, sculpture: string): Question<Insights | null | undefined> =>
  live(desk, `insights ${sculpture}`, async (again) => {
    const current = await desk.store.current(sculpture);
    if (!current || current.gone) return { value: null };
    const kept = await keptFigures(desk, sculpture);
    if (kept) return { value: insights(kept) };
    return { value: undefined, after: () => workOut(desk, [sculpture], again) };
  });

/** The same of every work, and what they teach together. */
export const collectionInsights = (desk: Desk): Question<CollectionInsights> =>
  live(desk, 'insights', async (again) => {
    const works = (await thingsOfKind(desk, 'sculpture')).map(({ thing }) => thing);
    const kept = await Promise.all(works.map(async (work) => ({ work, figures: await keptFigures(desk, work) })));
    const stale = kept.filter(({ figures }) => figures === undefined).map(({ work }) => work);
    const perWork = kept.flatMap(({ figures }) => (figures ? [insights(figures)] : []));
    const value = { perWork, workingOut: stale.length };
    return { value, ...(stale.length > 0 ? { after: () => workOut(desk, stale, again) } : {}) };
  });
