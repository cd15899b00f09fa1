import { clearlyWorseGreen, previousComparable, thenAndNow } from '../../engine/change';
import { classesOf, type RoundClasses, type SculptureScore, scoreRound } from '../../engine/condition';
import type { SculptureRecord } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { bringUpToDate, isBehind, needFound } from './figures';
import { live } from './live';
import { ask } from './question';
import { recordOf } from './records';

/** One round with all that is asked of it. */
export interface AskedRound {
  readonly record: SculptureRecord;
  /** The round it counts as: itself, unless it was said to be one with another. */
  readonly round: string;
  readonly score: SculptureScore;
  readonly classes: RoundClasses;
}

/** Classes of a round, with what changed since the last comparable one heard; where there is none, nobody compared. */
const classesIn = (record: SculptureRecord, round: string, score: SculptureScore): RoundClasses => {
  const { round: previous } = previousComparable(record, round);
  const clearlyWorse = previous && clearlyWorseGreen(thenAndNow(record, previous.thing, round));
  return classesOf(record, round, { score, ...(clearlyWorse ? { clearlyWorse } : {}) });
};

const scored = new WeakMap<SculptureRecord, Map<string, AskedRound>>();

const askedRound = (record: SculptureRecord, round: string): AskedRound | null => {
  const already = scored.get(record)?.get(round);
  if (already) return already;
  if (!record.rounds.some(({ thing }) => thing === round)) return null;
  const score = scoreRound(record, round);
  const asked = { record, round, score, classes: classesIn(record, round, score) };
  const rows = scored.get(record) ?? new Map<string, AskedRound>();
  scored.set(record, rows.set(round, asked));
  return asked;
};

const sculptureOfRound = async (desk: Desk, round: string): Promise<{ sculpture: string; root: string } | null> => {
  const seen = new Set<string>();
  for (let at = round; ; ) {
    const current = await desk.store.current(at);
    if (!current || current.gone) return null;
    const part = current.lead.body.partOf;
    seen.add(at);
    if (typeof part !== 'string' || seen.has(part)) return { sculpture: current.within, root: at };
    at = part;
  }
};

const asKept = new WeakMap<object, AskedRound>();

/**
 * Index, its range, its parts and the classes of one round; null where there is no such round. Of the round a work is known by the
 * classes are those of its figures, which have heard of holds and trends; until they are worked out, and of other rounds, those that
 * can be told from the round alone.
 */
export const roundScore = (desk: Desk, round: string): Question<AskedRound | null> =>
  live<AskedRound | null>(desk, `score ${round}`, async () => {
    const found = await sculptureOfRound(desk, round);
    if (!found) return { value: null };
    const record = await recordOf(desk, found.sculpture);
    const need = (await needFound(desk, found.sculpture))?.value;
    const after = need && !(await isBehind(desk)) ? undefined : () => bringUpToDate(desk);
    if (need?.score.round !== found.root) return { value: askedRound(record, found.root), after };
    const known = asKept.get(need);
    if (known?.record === record) return { value: known, after };
    const asked = { record, round: found.root, score: need.score, classes: need.classes };
    asKept.set(need, asked);
    return { value: asked, after };
  });

/** The round's record alone, without scoring it: for the round screens. */
export const roundSetting = (
  desk: Desk,
  round: string,
): Question<{ readonly record: SculptureRecord; readonly round: string } | null> =>
  ask(desk, `setting ${round}`, () => desk.store.changes(), settingOf(desk, round));

const settingOf = (desk: Desk, round: string) => {
  let last: { readonly record: SculptureRecord; readonly round: string } | null = null;
  return async () => {
    const found = await sculptureOfRound(desk, round);
    if (!found) return null;
    const record = await recordOf(desk, found.sculpture);
    if (last?.record !== record || last.round !== found.root) last = { record, round: found.root };
    return last;
  };
};
