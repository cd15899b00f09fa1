import { addDays, dayRange, type Reason, type SculptureRecord, type Thing } from '../record';
import { expiresSoonDays, unitSizes } from '../trade';
import { areaDone } from './areaDone';
import { sameProduct } from './lastOn';
import { because } from './reasonCodes';

export type StoreFlag = 'expired' | 'expires soon' | 'low' | 'count again' | 'no safety sheet';

interface Figure {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A tin of the store as it stands today. */
export interface StoreRow {
  readonly product: Thing<'product'>;
  /** In its own unit, less what was used since it was counted; undefined where nobody counts it. */
  readonly left: number | undefined;
  /** All that the log says was used of it, in its own unit. */
  readonly used: number;
  readonly uses: number;
  /** Each of them, by its entry in a logbook. */
  readonly log: readonly { readonly treatment: string; readonly date: string }[];
  /** How much goes on a square metre in one coat, as the log has it; grams or millilitres where they can be told, else its own unit. */
  readonly rate: (Figure & { readonly unit: string; readonly reasons: readonly Reason[] }) | undefined;
  /** Square metres of one coat that what is left will do. */
  readonly reaches: Figure | undefined;
  readonly flags: readonly StoreFlag[];
}

/** What is in store, in the order of the list, by what the logbooks of all works say was used. */
export const storeOf = (
  products: readonly Thing<'product'>[],
  records: readonly SculptureRecord[],
  today: string,
): readonly StoreRow[] => products.map((product) => rowOf(product, records, today));

const rowOf = (product: Thing<'product'>, records: readonly SculptureRecord[], today: string): StoreRow => {
  const { body } = product;
  const uses = records.flatMap((record) =>
    record.treatments
      .filter((treatment) => treatment.body.stock === product.thing)
      .map((treatment) => ({ thing: treatment.thing, body: treatment.body, area: areaDone(record, treatment) })),
  );
  const used = sum(uses.map((use) => use.body.used ?? 0));
  const since = sum(
    uses.filter((use) => isSince(product, use.thing, dayRange(use.body.date).from)).map((use) => use.body.used ?? 0),
  );
  const over = body.left === undefined ? 0 : body.left - since;
  const left = body.left === undefined ? undefined : Math.max(0, over);
  const rate = rateOf(
    product,
    uses
      .filter((use) => (use.body.used ?? 0) > 0 && use.area.value > 0)
      .map(({ body: { used: of, coats }, area }) => {
        const times = coats ?? 1;
        return {
          used: of ?? 0,
          value: area.value * times,
          low: area.low * times,
          high: area.high * times,
          m2: area.value,
        };
      }),
  );
  const size = sizeOf(product).size;
  const reaches =
    left === undefined || !rate
      ? undefined
      : { value: (left * size) / rate.value, low: (left * size) / rate.high, high: (left * size) / rate.low };
  const log = uses.map(({ thing, body: { date } }) => ({ treatment: thing, date }));
  return { product, left, used, uses: uses.length, log, rate, reaches, flags: flagsOf(product, left, over < 0, today) };
};

/** After the count: a later day, or the same day and not yet in the logbook when it was counted. */
const isSince = ({ body: { counted, countedWith = [] } }: Thing<'product'>, use: string, from: string): boolean =>
  counted !== undefined && (from > counted || (from === counted && !countedWith.includes(use)));

const sum = (numbers: readonly number[]): number => numbers.reduce((all, each) => all + each, 0);

/** Into what an amount of it is turned, and by how much. */
const sizeOf = ({ body }: Thing<'product'>): { readonly in: string; readonly size: number } => {
  const known = unitSizes[body.unit ?? ''];
  if (known) return known;
  return body.gramsPerUnit === undefined ? { in: body.unit ?? '', size: 1 } : { in: 'g', size: body.gramsPerUnit };
};

interface Use extends Figure {
  readonly used: number;
  readonly m2: number;
}

const rateOf = (product: Thing<'product'>, uses: readonly Use[]): StoreRow['rate'] => {
  if (uses.length === 0) return undefined;
  const { in: unit, size } = sizeOf(product);
  const amount = sum(uses.map(({ used }) => used)) * size;
  const over = (of: (use: Use) => number) => amount / sum(uses.map(of));
  const reasons = [because('care: rate from the log', { uses: uses.length, m2: sum(uses.map(({ m2 }) => m2)) })];
  return { value: over((u) => u.value), low: over((u) => u.high), high: over((u) => u.low), unit, reasons };
};

const flagsOf = ({ body }: Thing<'product'>, left: number | undefined, below: boolean, today: string): StoreFlag[] => [
  ...(body.expires === undefined
    ? []
    : body.expires < today
      ? (['expired'] as const)
      : body.expires <= addDays(today, expiresSoonDays)
        ? (['expires soon'] as const)
        : []),
  ...(below ? (['count again'] as const) : []),
  ...(left !== undefined && body.least !== undefined && left <= body.least ? (['low'] as const) : []),
  ...(body.sheet?.trim() ? [] : (['no safety sheet'] as const)),
];

/** Something to order: good tins of one name no longer come to more than the least there should be. */
export interface ToOrder {
  readonly name: string;
  readonly left: number;
  readonly least: number;
  readonly unit: string;
  readonly rows: readonly StoreRow[];
}

/** What to order, by name of the product. Tins past their day count for nothing; what nobody counts is not ordered. */
export const orderList = (rows: readonly StoreRow[]): readonly ToOrder[] => {
  const groups: StoreRow[][] = [];
  for (const row of rows.filter(({ product }) => product.body.ended === undefined)) {
    const group = groups.find(([first]) => first && sameProduct(first.product.body.name, row.product.body.name));
    if (group) group.push(row);
    else groups.push([row]);
  }
  return groups.flatMap((group): ToOrder[] => {
    const counted = group.filter(({ left }) => left !== undefined);
    if (counted.length === 0) return [];
    const good = counted.filter(({ flags }) => !flags.includes('expired'));
    const left = sum(good.map((row) => row.left ?? 0));
    const least = Math.max(0, ...group.map(({ product }) => product.body.least ?? 0));
    const { name, unit = '' } = (group[0] as StoreRow).product.body;
    return left <= least ? [{ name: name.trim(), left, least, unit, rows: group }] : [];
  });
};
