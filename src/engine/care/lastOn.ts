import { endOf, type SculptureRecord, type Thing, vagueDateOrder } from '../record';
import { treatmentOf } from '../trade';

/** A zone whose last coating was of another product. */
export interface OtherProduct {
  readonly zone: Thing<'zone'>;
  readonly product: string;
  readonly date: string;
}

/** The same product however it is spaced or capitalised. */
export const sameProduct = (one: string, other: string): boolean => plain(one) === plain(other);

const plain = (name: string): string => name.normalize('NFC').trim().replace(/\s+/g, ' ').toLowerCase();

/** Zones (none named: all that live) on which the last coating with a product was of another one than `product`. */
export const otherProduct = (
  record: SculptureRecord,
  zones: readonly string[],
  product: string,
): readonly OtherProduct[] => {
  if (!product.trim()) return [];
  const treatments = [...record.treatments].sort((a, b) =>
    vagueDateOrder(a.body.date) < vagueDateOrder(b.body.date) ? 1 : -1,
  );
  return record.zones
    .filter((zone) => endOf(zone) === undefined && (zones.length === 0 || zones.includes(zone.thing)))
    .flatMap((zone) => {
      const last = treatments.find(({ body }) => {
        const row = treatmentOf(body.type);
        const here = body.zones.length === 0 || body.zones.includes(zone.thing);
        return here && (row?.takes || (row?.coats && body.product?.trim()));
      })?.body;
      if (!last?.product || treatmentOf(last.type)?.takes || sameProduct(last.product, product)) return [];
      return [{ zone, product: last.product, date: last.date }];
    });
};
