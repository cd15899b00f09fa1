import { type BodyOf, dayRange, type SculptureRecord, type Thing, vagueDateOrder } from '../record';
import { sameProduct } from './lastOn';

type Cost = NonNullable<BodyOf<'treatment'>['cost']>;

/** What was done to one work in one calendar year. */
export interface Season {
  /** In order of date. */
  readonly treatments: readonly Thing<'treatment'>[];
  /** By role; `unknown` counts those of whom no hours are written down. */
  readonly hours: readonly { readonly role: string; readonly hours: number; readonly unknown: number }[];
  /** One sum a currency. */
  readonly costs: readonly Cost[];
  /** `used` in the unit of its tin in the store, 0 where nobody wrote it down. */
  readonly products: readonly {
    readonly product: string;
    readonly batch: string;
    readonly stock: string | undefined;
    readonly uses: number;
    readonly used: number;
  }[];
  readonly notReached: readonly { readonly date: string; readonly text: string }[];
}

/** Whether a vague date lies within one year and no other. */
export const isInYear = (date: string, year: number): boolean => {
  const { from, to } = dayRange(date);
  return from.slice(0, 4) === String(year) && to.slice(0, 4) === String(year);
};

export const seasonOf = (record: SculptureRecord, year: number): Season => {
  const treatments = record.treatments
    .filter(({ body }) => isInYear(body.date, year))
    .sort((a, b) => (vagueDateOrder(a.body.date) < vagueDateOrder(b.body.date) ? -1 : 1));
  const bodies = treatments.map(({ body }) => body);
  const hours = new Map<string, { hours: number; unknown: number }>();
  for (const { role, hours: given } of bodies.flatMap(({ people }) => people ?? [])) {
    const was = hours.get(role) ?? { hours: 0, unknown: 0 };
    hours.set(role, { hours: was.hours + (given ?? 0), unknown: was.unknown + (given === undefined ? 1 : 0) });
  }
  const costs = new Map<string, number>();
  for (const { cost } of bodies) if (cost) costs.set(cost.currency, (costs.get(cost.currency) ?? 0) + cost.minor);
  const products: { product: string; batch: string; stock: string | undefined; uses: number; used: number }[] = [];
  for (const { product = '', batch = '', stock, used = 0 } of bodies.filter((body) => body.product?.trim())) {
    const same = products.find(
      (row) => sameProduct(row.product, product) && row.batch === batch && row.stock === stock,
    );
    if (same) {
      same.uses += 1;
      same.used += used;
    } else products.push({ product, batch, stock, uses: 1, used });
  }
  return {
    treatments,
    hours: [...hours].map(([role, of]) => ({ role, ...of })),
    costs: [...costs].map(([currency, minor]) => ({ currency, minor })),
    products,
    notReached: bodies.flatMap(({ date, left }) => (left?.trim() ? [{ date, text: left }] : [])),
  };
};

/** Years in which something was done, looked at or surveyed, this one always among them; the last first. */
export const seasonsOf = (record: SculptureRecord, thisYear: number): readonly number[] => {
  const dates = [...record.treatments, ...record.looks, ...record.rounds].map(({ body }) => body.date);
  const years = dates
    .filter((date) => dayRange(date).from !== '0000')
    .map((date) => Number(dayRange(date).from.slice(0, 4)));
  return [...new Set([thisYear, ...years.filter((year) => year <= thisYear)])].sort((a, b) => b - a);
};
