import { dayRange, type Reason, type Thing } from '../record';
import { treatmentOf } from '../trade';
import { type Compared, colourDifference } from './colourDifference';
import { cautionsBetween, comparable, type ReadingConditions } from './conditions';
import { meanReading } from './meanReading';
import { because } from './reasonCodes';

export interface AgainstAgreed {
  readonly agreed: Thing<'agreedColour'>;
  readonly compared: Compared;
}

/**
 * The colour in force at a place on a day: the latest agreed by then, that of the zone before that of the whole work. Of several
 * agreed that day (one panel read in several ways) the one that may be compared with the reading, if there is one.
 */
export const agreedInForce = (
  read: ReadingConditions & { readonly date: string },
  agreed: readonly Thing<'agreedColour'>[],
  zone: string | undefined,
): Thing<'agreedColour'> | undefined => {
  const known = agreed.filter(({ body }) => body.date <= read.date);
  const own = known.filter(({ body }) => zone !== undefined && body.zone === zone);
  const scope = own.length > 0 ? own : known.filter(({ body }) => body.zone === undefined);
  const latest = scope
    .map(({ body }) => body.date)
    .sort()
    .at(-1);
  const ofThatDay = scope.filter(({ body }) => body.date === latest);
  return ofThatDay.find(({ body }) => comparable(body, read).length === 0) ?? ofThatDay[0];
};

/** How far a reading lies from the colour agreed by its day; null where none was. `zone`: that of the reading, or of its sentinel. */
export const againstAgreed = (
  reading: Thing<'reading'>,
  agreed: readonly Thing<'agreedColour'>[],
  zone: string | undefined,
): AgainstAgreed | null => {
  const held = agreedInForce(reading.body, agreed, zone);
  if (!held) return null;
  const refused = comparable(held.body, reading.body);
  if (refused.length > 0) return { agreed: held, compared: { refused } };
  const difference = colourDifference({ agreed: held.body.value }, meanReading(reading.body.values));
  const reasons = [...difference.reasons, ...cautionsBetween({ ...held.body, instrument: undefined }, reading.body)];
  return { agreed: held, compared: { ...difference, reasons } };
};

export interface AgainstEarlier {
  readonly earlier: Thing<'reading'>;
  readonly compared: Compared;
}

/** Work on a place that may lie between two days, the earliest first. */
const doneBetween = (
  treatments: readonly Thing<'treatment'>[],
  zone: string | undefined,
  from: string,
  to: string,
): readonly Thing<'treatment'>[] =>
  treatments
    .filter(({ body }) => body.zones.length === 0 || zone === undefined || body.zones.includes(zone))
    .filter(({ body }) => {
      const range = dayRange(body.date);
      return range.to >= from && range.from <= to;
    })
    .sort((a, b) => a.body.date.localeCompare(b.body.date));

const whatWasDone = (code: 'colour: another surface since' | 'colour: done in between', { body }: Thing<'treatment'>) =>
  because(code, { treatment: body.type, date: body.date });

/**
 * How far a reading lies from the one before it at the same spot, of whatever year that is; null where there is none. `earlier` are
 * readings of that spot. One made in another way is passed over for the next before it, and that is said; where none fits, the
 * reasons against the nearest are given. Across work that makes another surface of it nothing is compared.
 */
export const againstLastYear = (
  reading: Thing<'reading'>,
  earlier: readonly Thing<'reading'>[],
  treatments: readonly Thing<'treatment'>[] = [],
  zone: string | undefined = reading.body.zone,
): AgainstEarlier | null => {
  const before = earlier
    .filter(({ body }) => body.date < reading.body.date)
    .sort((a, b) => b.body.date.localeCompare(a.body.date) || (a.thing < b.thing ? 1 : -1));
  const nearest = before[0];
  if (!nearest) return null;
  const at = before.findIndex(({ body }) => comparable(body, reading.body).length === 0);
  const found = before[at];
  if (!found) return { earlier: nearest, compared: { refused: comparable(nearest.body, reading.body) } };
  const done = doneBetween(treatments, zone, found.body.date, reading.body.date);
  const anew = done.filter(({ body }) => treatmentOf(body.type)?.breaksSeries);
  if (anew.length > 0)
    return {
      earlier: found,
      compared: { refused: anew.map((work) => whatWasDone('colour: another surface since', work)) },
    };
  const difference = colourDifference(meanReading(found.body.values), meanReading(reading.body.values));
  const reasons: Reason[] = [
    ...difference.reasons,
    ...before.slice(0, at).map(({ body }) => because('colour: passed over', { date: body.date })),
    ...done.map((work) => whatWasDone('colour: done in between', work)),
    ...cautionsBetween(found.body, reading.body),
  ];
  return { earlier: found, compared: { ...difference, reasons } };
};
