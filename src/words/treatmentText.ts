import type { BodyOf, SculptureRecord, Thing } from '../engine/record';
import { gateOf } from '../engine/weather';
import { careDay } from './en/careDay';
import { logbook as words } from './en/logbook';
import { date, list, number } from './format';

type Body = BodyOf<'treatment'>;

/** "The whole work", "Zone B", "Zones A, B and C". */
export const whereDone = (record: Pick<SculptureRecord, 'zones'>, zones: readonly string[]): string => {
  const letters = zones.map((name) => record.zones.find(({ thing }) => thing === name)?.body.letter ?? '?');
  if (letters.length === 0) return words.whole;
  return letters.length === 1 ? words.zoneOf(list(letters)) : words.zonesOf(list(letters));
};

/** "Steward 3 h, Helper 2.5 h", else who it was said to be by. */
export const whoDid = ({ people = [], by = '' }: Pick<Body, 'people' | 'by'>): string => {
  const named = people.map(({ role, name, hours }) =>
    [role, name && `(${name})`, hours !== undefined && words.hours(number(hours, 2))].filter(Boolean).join(' '),
  );
  return named.length > 0 ? named.join(', ') : by;
};

/** One day, or the first and the last of several. */
export const whenDone = ({ date: first, ended }: Pick<Body, 'date' | 'ended'>): string =>
  ended && ended !== first ? words.from(date(first), date(ended)) : date(first);

/** Product with its batch, where there is one. */
export const withWhat = ({ product = '', batch = '' }: Pick<Body, 'product' | 'batch'>): string =>
  product && batch ? words.withBatch(product, batch) : product;

/** The reading it was done on, in a line: "Wait at 10:40, 1.4 K over dew; gone on all the same". */
export const airText = (reading: Thing<'weather'> | undefined): string => {
  if (!reading) return '';
  const { body } = reading;
  const margin = body.humidity > 0 ? number(gateOf(body).margin.value, 1) : '?';
  return words.onAir(careDay.says[body.said], body.time, margin, body.overridden !== undefined);
};
