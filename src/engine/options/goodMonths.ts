import type { Hold, ZoneHolds } from '../hold';
import type { BodyOf, Reason } from '../record';
import { optionSortOf } from '../trade';
import { because } from './reasonCodes';
import { monthsByZone, monthsOfYear, type Situation } from './situation';

type GoodMonths = NonNullable<BodyOf<'option'>['goodMonths']>;

/** Months of a year in which even the worst zone stays clear, and where that comes from; null where nobody can tell but a person. */
export interface GoodMonthsTold {
  readonly months: (Pick<GoodMonths, 'value' | 'low' | 'high'> & { readonly from: 'own holds' | 'published' }) | null;
  readonly reasons: readonly Reason[];
}

const { capped } = monthsOfYear;

/** Of waxing as it goes on: the zone whose coating lasts least says it for the work. */
const ofWaxing = (situation: Situation): GoodMonthsTold => {
  const zones = monthsByZone(situation);
  const known = zones.flatMap(({ zone, months, notClean }) => (months ? [{ zone, ...months, notClean }] : []));
  const worst = known.reduce<(typeof known)[number] | undefined>(
    (least, one) => (least && least.value <= one.value ? least : one),
    undefined,
  );
  if (!worst) return { months: null, reasons: [] };
  const low = Math.min(...known.map((one) => one.low));
  const high = Math.min(...known.map((one) => one.high));
  const unknown = zones.length - known.length;
  return {
    months: {
      value: worst.value,
      low: Math.min(low, worst.value),
      high: Math.max(high, worst.value),
      from: 'own holds',
    },
    reasons: [
      worst.notClean
        ? because('months: no clean start', { zone: worst.zone })
        : because('months: worst zone', { zone: worst.zone, months: worst.value }),
      because('months: coated once a year'),
      ...(unknown > 0 ? [because('months: zones not known', { count: unknown })] : []),
    ],
  };
};

const middleOf = ({ lower, upper }: Hold): number => capped(upper === null ? lower : (lower + upper) / 2);
const meanOf = (list: readonly number[]): number => list.reduce((sum, x) => sum + x, 0) / list.length;

/** Of zones of this collection that were treated so: the holds since, of all works, worst zone first. */
const ofTreated = (treatments: readonly string[], works: readonly (readonly ZoneHolds[])[]): GoodMonthsTold => {
  const perWork = works.map((zones) =>
    zones.flatMap(({ spans, holds }) => {
      const treated = spans.flatMap(({ treatments: done }, span) =>
        done.some(({ type }) => treatments.includes(type)) ? [span] : [],
      );
      const since = holds.filter(({ span }) => treated.includes(span));
      return since.length > 0 ? [since] : [];
    }),
  );
  const zones = perWork.flat();
  const worst = zones.reduce<readonly Hold[] | undefined>(
    (least, one) => (least && meanOf(least.map(middleOf)) <= meanOf(one.map(middleOf)) ? least : one),
    undefined,
  );
  if (!worst) return { months: null, reasons: [] };
  const value = meanOf(worst.map(middleOf));
  const still = zones.filter((holds) => holds.at(-1)?.upper === null).length;
  return {
    months: {
      value,
      low: Math.min(value, ...worst.map(({ lower }) => capped(lower))),
      high: Math.max(value, ...worst.map(({ upper }) => capped(upper ?? monthsOfYear.year))),
      from: 'own holds',
    },
    reasons: [
      because('months: own holds of treated', {
        zones: zones.length,
        works: perWork.filter((list) => list.length > 0).length,
      }),
      ...(still > 0 ? [because('months: still holding', { count: still })] : []),
    ],
  };
};

/**
 * Good months a year of a way to go on: this collection's own holds first, else what is published, else nothing, and she is asked.
 * `works` are the holds of every work of the collection.
 */
export const goodMonthsOf = (
  sort: string,
  situation: Situation,
  works: readonly (readonly ZoneHolds[])[],
): GoodMonthsTold => {
  const row = optionSortOf(sort);
  const waxing = sort === 'keep waxing';
  const own = waxing ? ofWaxing(situation) : ofTreated(row?.laysColour ? row.treatments : [], works);
  if (own.months) return own;
  if (!row?.holds) return { months: null, reasons: [because('months: nothing to go by')] };
  const { low, high } = row.holds;
  return {
    months: { value: capped((low + high) / 2), low: capped(low), high: capped(high), from: 'published' },
    reasons: [because('months: published', { low, high }), because('months: coated once a year')],
  };
};
