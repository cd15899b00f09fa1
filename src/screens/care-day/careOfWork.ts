import { plannedOf, plannedOfCollection, sculptureRecordOf } from '../../actions';
import { sameProduct } from '../../engine/care';
import { type SculptureRecord, type Thing, vagueDateOrder } from '../../engine/record';
import { sortOfProduct, treatmentOf } from '../../engine/trade';
import { useDesk, useQuestion } from '../shell';

/** What the care of one work rests on; undefined while it is read, null where the work is not here. */
export const useCareOf = (sculpture: string) => {
  const desk = useDesk();
  const record = useQuestion(sculptureRecordOf(desk, sculpture));
  const planned = useQuestion(plannedOf(desk, sculpture));
  const kept = useQuestion(plannedOfCollection(desk));
  if (record === null) return null;
  return record && planned && kept ? { record, planned, products: kept.product } : undefined;
};

export type CareOf = NonNullable<ReturnType<typeof useCareOf>>;

/** Coatings that lie in the store and are still used. */
export const coatingsInStore = (products: readonly Thing<'product'>[]): readonly Thing<'product'>[] =>
  products.filter(({ body }) => body.ended === undefined && (sortOfProduct(body.sort)?.coats ?? true));

/** The tin that was used last on this work; is it gone, the newest of the same product; else the only one there is. */
export const usualTin = (record: SculptureRecord, tins: readonly Thing<'product'>[]): string => {
  const last = [...record.treatments]
    .sort((a, b) => (vagueDateOrder(a.body.date) < vagueDateOrder(b.body.date) ? 1 : -1))
    .find(({ body }) => treatmentOf(body.type)?.coats && (body.stock || body.product?.trim()))?.body;
  const same = tins
    .filter(({ body }) => last?.product !== undefined && sameProduct(body.name, last.product))
    .sort((a, b) => ((a.body.opened ?? '') < (b.body.opened ?? '') ? 1 : -1));
  const tin = tins.find(({ thing }) => thing === last?.stock) ?? same[0] ?? (tins.length === 1 ? tins[0] : undefined);
  return tin?.thing ?? '';
};

/** Readings kept of a work, the last first. */
export const readingsOf = (weather: readonly Thing<'weather'>[]): readonly Thing<'weather'>[] =>
  [...weather].sort((a, b) => (`${a.body.date} ${a.body.time}` < `${b.body.date} ${b.body.time}` ? 1 : -1));
