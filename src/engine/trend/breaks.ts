import { dayRange, type SculptureRecord, type Thing } from '../record';
import { treatmentOf } from '../trade';
import type { Break, CoatTick, SeriesPoint } from './series';

type Treatment = Thing<'treatment'>;

const touches = ({ body }: Treatment, zones: ReadonlySet<string>): boolean =>
  body.zones.length === 0 || body.zones.some((zone) => zones.has(zone));

/** What broke the series of these zones, and the coatings they got, in order of date. `m2` gives the area of a zone followed. */
export const doneTo = (record: SculptureRecord, m2: ReadonlyMap<string, number>) => {
  const zones = new Set(m2.keys());
  const whole = [...m2.values()].reduce((sum, area) => sum + area, 0);
  const done = record.treatments
    .filter((treatment) => touches(treatment, zones))
    .map((treatment) => ({ treatment, row: treatmentOf(treatment.body.type), range: dayRange(treatment.body.date) }))
    .filter(({ range }) => range.from > '0000' && range.to < '9999')
    .sort((a, b) => a.range.to.localeCompare(b.range.to) || (a.treatment.thing < b.treatment.thing ? -1 : 1));
  const shareOf = ({ body }: Treatment): number => {
    if (body.zones.length === 0 || whole === 0) return 1;
    return body.zones.reduce((sum, zone) => sum + (m2.get(zone) ?? 0), 0) / whole;
  };
  const breaks: Break[] = done
    .filter(({ row }) => row?.breaksSeries)
    .map(({ treatment, range }) => ({
      treatment: treatment.thing,
      type: treatment.body.type,
      date: treatment.body.date,
      day: range.to,
      sure: range.from === range.to,
      share: shareOf(treatment),
    }));
  const ticks: CoatTick[] = done
    .filter(({ row }) => row?.coats)
    .map(({ treatment, range }) => ({ treatment: treatment.thing, type: treatment.body.type, day: range.to }));
  return { breaks, ticks };
};

/** A look before the wash comes before what was done that day, one after it after. */
const isAfter = (round: Thing<'round'>, day: string): boolean =>
  round.body.date > day ||
  (round.body.date === day && (round.body.washed === 'after wash' || round.body.type === 'after treatment'));

/** The first break no round of the series lies after; null where none was since `last`. */
export const brokenSince = (last: Thing<'round'> | undefined, breaks: readonly Break[]): Break | null =>
  (last && breaks.find(({ date, day }) => !isAfter(last, day) && last.body.date <= dayRange(date).from)) ?? null;

/** The unbroken stretch a round stands in; null where a break whose date is vague may lie before it or after it. */
export const spanOf = (round: Thing<'round'>, breaks: readonly Break[]): SeriesPoint['span'] => {
  const between = breaks.some(
    ({ date, day, sure }) => !sure && !isAfter(round, day) && round.body.date >= dayRange(date).from,
  );
  return between ? null : breaks.filter(({ day }) => isAfter(round, day)).length;
};
