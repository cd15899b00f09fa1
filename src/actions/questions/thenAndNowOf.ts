import { type ThenAndNow, thenAndNow } from '../../engine/change';
import type { SculptureRecord } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from './question';
import { recordOf } from './records';

const compared = new WeakMap<SculptureRecord, Map<string, ThenAndNow>>();

/** Two rounds of one sculpture held against each other; null where one of them is not here. */
export const thenAndNowOf = (desk: Desk, earlier: string, later: string): Question<ThenAndNow | null> =>
  ask(
    desk,
    `then and now ${earlier} ${later}`,
    () => desk.store.changes(),
    async () => {
      const current = await desk.store.current(later);
      if (!current || current.gone) return null;
      const record = await recordOf(desk, current.within);
      if (![earlier, later].every((round) => record.rounds.some(({ thing }) => thing === round))) return null;
      const rows = compared.get(record) ?? new Map<string, ThenAndNow>();
      compared.set(record, rows);
      const key = `${earlier} ${later}`;
      const answer = rows.get(key) ?? thenAndNow(record, earlier, later);
      rows.set(key, answer);
      return answer;
    },
  );
