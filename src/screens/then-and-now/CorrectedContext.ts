import { createContext } from 'react';
import type { EyesKnown } from '../../actions';
import type { Seen, ThenAndNow } from '../../engine/change';
import { isByEye } from '../../engine/condition';
import { likelyTrue } from '../../engine/eye';
import { share, w } from '../../words';

/** What is likely true of a coverage one of the two rounds saw, in words; undefined where no lean of that eye is shown. */
export type Corrected = (which: 'earlier' | 'later', seen: Seen) => string | undefined;

export const CorrectedContext = createContext<Corrected>(() => undefined);

/** By the eye of who looked in each of the two rounds. What was entered stays as it is, and this is used in no sum. */
export const correctedBy =
  (answer: ThenAndNow, known: EyesKnown | undefined): Corrected =>
  (which, { state, coverage }) => {
    const eye = known?.eyes[answer[which].body.surveyor];
    if (state !== 'seen' || !coverage || !isByEye(coverage) || !eye?.curve?.shown) return undefined;
    const { value, reasons } = likelyTrue(coverage, eye.sd, eye.curve);
    // A curve too flat to be turned around corrects nothing.
    if (!reasons.some(({ code }) => code === 'eye: corrected by the curve')) return undefined;
    return w.eyeCheck.corrected(share(value));
  };
