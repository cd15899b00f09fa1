import { type StoreRow, storeOf } from '../../engine/care';
import { asThing, type Thing } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from '../questions/question';
import { recordOf } from '../questions/records';

/** What is in store, by what the logbooks of all works say was used. */
export const productStore = (desk: Desk): Question<readonly StoreRow[]> =>
  ask(
    desk,
    'product store',
    () => desk.store.changes(),
    async () => {
      const products = (await desk.store.within(desk.collection, ['product'])).flatMap(
        (current): Thing<'product'>[] => {
          const thing = current.gone ? undefined : asThing(current, 'product');
          return thing ? [thing] : [];
        },
      );
      const used = (await desk.store.ofKind('treatment')).filter(
        ({ gone, lead }) => !gone && typeof lead.body.stock === 'string',
      );
      const works = new Set(used.map(({ within }) => within));
      const records = [];
      for (const work of works)
        if ((await desk.store.current(work))?.gone === false) records.push(await recordOf(desk, work));
      return storeOf(products, records, desk.today());
    },
  );
