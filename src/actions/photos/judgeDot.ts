import { seedOf } from '../../engine/chance';
import type { Outline } from '../../engine/photo';
import type { Desk, Outcome } from '../desk';
import { attempt, refuse } from '../outcome';
import { refusal } from '../reasonCodes';
import { keepMeasure } from './keepMeasure';
import { changeDraft, type MeasureOf, type Working } from './measureAtHand';

/** On the finding, not on it, glare: cannot be told. */
export type DotAnswer = 'y' | 'n' | 'g';

/** Dots of a count; check dots in a mask and outside it. */
export type DotList = 'answers' | 'inMask' | 'outsideMask';

const open = '-';
const lists: readonly DotList[] = ['answers', 'inMask', 'outsideMask'];

/** In the order they are asked: all answers of a working one after the other. */
export const answersOf = (working: Working): string => lists.map((list) => working[list] ?? '').join('');

const withAnswer = (answers: string, at: number, letter: string): string =>
  answers.slice(0, at) + letter + answers.slice(at + 1);

/** Lays so many dots over the part and forgets an earlier count that was not kept. */
export const layDots = (desk: Desk, of: MeasureOf, part: Outline, dots: number): Promise<Outcome> =>
  attempt(async () => {
    const working = { seed: seedOf(desk.newId()), dots, answers: open.repeat(dots) };
    await changeDraft(desk, of, () => ({ part, working, corners: [] }));
    return {};
  });

/**
 * One dot judged, durably. The last one makes the figure, in one deed; `kept` is then its name. Where the count tells nothing, all
 * in glare, it is kept as it is and makes no figure.
 */
export const judgeDot = (
  desk: Desk,
  of: MeasureOf,
  list: DotList,
  at: number,
  answer: DotAnswer,
): Promise<Outcome<{ readonly kept?: string }>> =>
  attempt(async () => {
    const { working } = await changeDraft(desk, of, (draft) => {
      const answers = draft?.working[list];
      if (!draft || answers === undefined || at < 0 || at >= answers.length) return refuse(refusal('no dots laid', {}));
      return { ...draft, working: { ...draft.working, [list]: withAnswer(answers, at, answer) } };
    });
    if (answersOf(working).includes(open)) return {};
    const outcome = await keepMeasure(desk, of);
    return outcome.ok ? { kept: outcome.measure } : {};
  });

/** A dot is to be judged again; also where the figure is kept, which stands until all are judged anew. */
export const takeBackDot = (desk: Desk, of: MeasureOf, list: DotList, at: number): Promise<Outcome> =>
  attempt(async () => {
    await changeDraft(desk, of, (draft) => {
      const answers = draft?.working[list] ?? '';
      if (!draft || !/[yng]/.test(answers.charAt(at))) return refuse(refusal('nothing to undo', {}));
      return { ...draft, working: { ...draft.working, [list]: withAnswer(answers, at, open) } };
    });
    return {};
  });

/** What a mask came to, and the check dots to be judged over it, all open. Check dots judged over an earlier mask are forgotten. */
export const layCheckDots = (
  desk: Desk,
  of: MeasureOf,
  laid: {
    readonly maskShare: number;
    readonly leftOut?: number;
    readonly inMask: number;
    readonly outsideMask: number;
  },
): Promise<Outcome> =>
  attempt(async () => {
    const { inMask, outsideMask, ...told } = laid;
    const dots = { inMask: open.repeat(inMask), outsideMask: open.repeat(outsideMask) };
    await changeDraft(desk, of, (draft) => {
      if (!draft) return refuse(refusal('no dots laid', {}));
      return { ...draft, working: { ...draft.working, ...told, ...dots } };
    });
    return {};
  });
