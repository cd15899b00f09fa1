import type { Reason } from '../../engine/record';
import { beadings, coverageMethods, kindOf, reasonsNotLooked, substrates, treatmentOf } from '../../engine/trade';
import {
  date,
  inQuotes,
  area as inSquareMetres,
  measure as inUnits,
  list,
  number,
  type Quantity,
  share,
} from '../format';
import { spoken } from '../tongue';

/** The parameters of a reason, as a sentence asks for them. Each key a sentence asks for is one its code has; a test checks that. */
export interface Params {
  text(key: string): string;
  number(key: string, digits?: number): string;
  /** "1 finding is", "3 findings are". */
  times(key: string, one: string, many: string): string;
  /** A share of 0 to 1. */
  percent(key: string): string;
  /** Square metres. */
  area(key: string): string;
  /** In the unit of the device, with the unit. */
  measure(key: string, quantity: Quantity, digits?: number): string;
  /** A day, or a date as vague as it was entered. */
  day(key: string): string;
  /** A kind of finding, in quotation marks. */
  kind(key: string): string;
  /** Several: their codes come parted by commas. */
  kinds(key: string): string;
  method(key: string): string;
  notLooked(key: string): string;
  treatment(key: string): string;
  beading(key: string): string;
  substrate(key: string): string;
  active(key: string): string;
  areaMethod(key: string): string;
  /** What is not known yet. */
  unknown(key: string): string;
  /** What was being done, by the code of its name; what was touched or taken has none. */
  deed(key: string): string;
  /** A zone, a round, a person: its name where the screen knows it. */
  thing(key: string): string;
}

export type Sentences<Code extends string> = Readonly<Record<Code, (s: Params) => string>>;

/** What a screen calls a thing, or undefined where it does not know it. */
export type NameOfThing = (thing: string) => string | undefined;

export const nameless: Readonly<Record<string, string>> = spoken('sentence', 'nameless', {
  zone: 'this zone',
  round: 'another round',
  surveyor: 'somebody',
  sculpture: 'this sculpture',
  finding: 'this finding',
  visit: 'this zone',
  photo: 'a photo',
  treatment: 'an entry of the logbook',
  bid: 'a bid',
});
export const active: Readonly<Record<string, string>> = spoken('sentence', 'active', {
  green: 'green',
  bare: 'bare metal',
  scale: 'hard-water scale',
});
export const unknown: Readonly<Record<string, string>> = spoken('sentence', 'unknown', {
  change: 'whether the green grew, for there is no earlier round like this one',
  hold: 'how long the coating holds here, for too few of its holds are recorded',
  'expected hold':
    'whether the coating is past the time it should hold, for too little is known of how long it holds here',
  forecast: 'what it will be by the next round, for no trend stands',
});
export const areaMethods: Readonly<Record<string, string>> = spoken('sentence', 'areaMethods', {
  typed: 'typed',
  solids: 'worked out from simple solids',
  strips: 'measured in strips',
  outline: 'taken from the outline',
});

export const deedsWithoutName: Readonly<Record<string, string>> = spoken('sentence', 'deedsWithoutName', {
  '': 'what was just done',
  touch: 'the last touch',
  photo: 'the photo',
});

export const loose = spoken('sentence', 'loose', {
  noReason: 'no reason given',
  elsewhere: 'something kept elsewhere',
});

const rowName = (rows: readonly { readonly id: string; readonly name: string }[], id: string): string =>
  rows.find((row) => row.id === id)?.name ?? id;

export const paramsOf = (reason: Reason, nameOf: NameOfThing = () => undefined): Params => {
  const given = (key: string): string | number => reason.params[key] ?? '';
  const text = (key: string): string => String(given(key));
  const quoted = (id: string): string => inQuotes(kindOf(id)?.name ?? id);
  return {
    text,
    number: (key, digits = 0) => number(Number(given(key)), digits),
    times: (key, one, many) => `${number(Number(given(key)), 0)} ${Number(given(key)) === 1 ? one : many}`,
    percent: (key) => share(Number(given(key))),
    measure: (key, quantity, digits = 0) => inUnits(quantity, Number(given(key)), digits),
    area: (key) => inSquareMetres(Number(given(key))),
    day: (key) => date(text(key)),
    kind: (key) => quoted(text(key)),
    kinds: (key) => list(text(key).split(', ').map(quoted)),
    method: (key) => rowName(coverageMethods, text(key)),
    notLooked: (key) => (text(key) === '' ? loose.noReason : rowName(reasonsNotLooked, text(key))),
    treatment: (key) => treatmentOf(text(key))?.name ?? text(key),
    beading: (key) => rowName(beadings, text(key)),
    substrate: (key) => rowName(substrates, text(key)),
    active: (key) => active[text(key)] ?? text(key),
    unknown: (key) => unknown[text(key)] ?? text(key),
    areaMethod: (key) => areaMethods[text(key)] ?? text(key),
    deed: (key) => deedsWithoutName[text(key)] ?? inQuotes(text(key).replace(/^deed: /, '')),
    thing: (key) => nameOf(text(key)) ?? nameless[text(key).split('/')[0] ?? ''] ?? loose.elsewhere,
  };
};
