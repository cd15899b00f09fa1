import { firstComparable, previousComparable, thenAndNow } from '../engine/change';
import type { SculptureRecord } from '../engine/record';
import type { Say } from './said';
import { shownChange } from './shownChange';

/**
 * One work's latest round against the last one it may be compared with, and against the first: `sinceFirst` is null where both are
 * one, `sinceLast` with the reasons in `notCompared` where there is none. `round` is a thing name, null where nobody has looked yet.
 */
export const shownChanges = (record: SculptureRecord, round: string | null, said: Say) => {
  const sculpture = record.sculpture.thing;
  if (round === null) return { sculpture, sinceLast: null, sinceFirst: null, notCompared: [] };
  const { round: previous, reasons } = previousComparable(record, round);
  const against = (earlier: string) => shownChange(thenAndNow(record, earlier, round), said);
  const first = firstComparable(record, round);
  return {
    sculpture,
    sinceLast: previous ? against(previous.thing) : null,
    sinceFirst: first && first.thing !== previous?.thing ? against(first.thing) : null,
    notCompared: previous ? [] : said(reasons),
  };
};
