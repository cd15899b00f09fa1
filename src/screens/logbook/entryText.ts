import type { TreatmentFields } from '../../actions';
import { isMoney, type Money, readMoney } from '../../engine/money';
import type { BodyOf, Reason } from '../../engine/record';
import { treatmentOf } from '../../engine/trade';
import { fieldText, moneyTyped, numberTyped, typedHours, typedMeasure, typedNumber } from '../../words';
import { type HoursSaid, peopleKept } from '../parts/peopleSaid';

type Body = BodyOf<'treatment'>;

/** What the entry form holds, as typed. */
export interface EntryText {
  readonly type: string;
  /** Only roughly known: words or a year in place of a day. */
  readonly rough: boolean;
  readonly day: string;
  readonly roughly: string;
  readonly ended: string;
  readonly whole: boolean;
  readonly zones: readonly string[];
  readonly product: 'same' | 'store' | 'other' | 'none';
  readonly productName: string;
  readonly batch: string;
  /** Thing of the store, or ''. */
  readonly stock: string;
  readonly used: string;
  readonly coats: string;
  readonly by: string;
  readonly people: readonly HoursSaid[];
  /** Thing of a reading, or ''. */
  readonly weather: string;
  readonly cost: string;
  readonly campaign: string;
  readonly takenAway: string;
  readonly left: string;
  readonly photosBefore: readonly string[];
  readonly photosAfter: readonly string[];
  readonly note: string;
}

/** What was put on last: what "the same as last time" means. */
export interface LastProduct {
  readonly product: string;
  readonly batch?: string | undefined;
  readonly stock?: string | undefined;
  readonly date: string;
}

const isDay = (date: string): boolean => /^\d{4}-\d{2}-\d{2}$/.test(date);

export const newEntry = (today: string): EntryText => ({
  type: 'wax',
  rough: false,
  day: today,
  roughly: '',
  ended: '',
  whole: true,
  zones: [],
  product: 'none',
  productName: '',
  batch: '',
  stock: '',
  used: '',
  coats: '1',
  by: '',
  people: [],
  weather: '',
  cost: '',
  campaign: '',
  takenAway: '',
  left: '',
  photosBefore: [],
  photosAfter: [],
  note: '',
});

const productOf = (body: Body, last: LastProduct | undefined): EntryText['product'] => {
  if (body.stock) return 'store';
  if (!body.product) return 'none';
  return last && body.product === last.product && body.batch === last.batch ? 'same' : 'other';
};

const typed = (value: number | undefined): string => (value === undefined ? '' : numberTyped(value));

export const entryTextOf = (body: Body, last: LastProduct | undefined, today: string): EntryText => ({
  ...newEntry(today),
  type: body.type,
  rough: !isDay(body.date),
  day: isDay(body.date) ? body.date : today,
  roughly: isDay(body.date) ? '' : body.date,
  ended: body.ended ?? '',
  whole: body.zones.length === 0,
  zones: body.zones,
  product: productOf(body, last),
  productName: body.product ?? '',
  batch: body.batch ?? '',
  stock: body.stock ?? '',
  used: typed(body.used),
  coats: String(body.coats ?? 1),
  by: body.by ?? '',
  people: (body.people ?? []).map(({ role, name, hours }) => ({ role, name, hours: typed(hours) })),
  weather: body.weather ?? '',
  cost: body.cost ? moneyTyped(body.cost) : '',
  campaign: body.campaign ?? '',
  takenAway: fieldText('area', body.takenAway),
  left: body.left ?? '',
  photosBefore: body.photosBefore ?? [],
  photosAfter: body.photosAfter ?? [],
  note: body.note ?? '',
});

export type EntryFault = 'day' | 'zones' | 'used' | 'hours' | 'role' | 'takenAway' | 'cost';

/** The cost as an amount, why it is none, or nothing where none was typed. */
export const costOf = (text: EntryText, currency: string): Money | Reason | undefined =>
  text.cost.trim() === '' ? undefined : readMoney(text.cost, currency);

/** Something stands there that could not be read. */
const isUnread = (text: string, read: number | undefined): boolean => text.trim() !== '' && read === undefined;

/** What is missing or wrong, by field; nothing where the entry can be kept. */
export const faultsIn = (text: EntryText, currency: string): ReadonlySet<EntryFault> => {
  const cost = costOf(text, currency);
  const faults: readonly (readonly [EntryFault, boolean])[] = [
    ['day', (text.rough ? text.roughly.trim() : text.day) === ''],
    ['zones', !text.whole && text.zones.length === 0],
    ['used', isUnread(text.used, typedNumber(text.used))],
    ['takenAway', isUnread(text.takenAway, typedMeasure('area', text.takenAway))],
    ['hours', text.people.some(({ hours }) => isUnread(hours, typedHours(hours)))],
    ['role', text.people.some(({ role, name, hours }) => !role.trim() && Boolean(name?.trim() || hours.trim()))],
    ['cost', cost !== undefined && !isMoney(cost)],
  ];
  return new Set(faults.filter(([, is]) => is).map(([fault]) => fault));
};

const given = (text: string): string | undefined => text.trim() || undefined;
const some = <T>(list: readonly T[]): T[] | undefined => (list.length > 0 ? [...list] : undefined);

const putOn = (text: EntryText, last: LastProduct | undefined, tin: BodyOf<'product'> | undefined) => {
  const used = typedNumber(text.used);
  switch (text.product) {
    case 'same':
      return { product: last?.product, batch: last?.batch, stock: last?.stock, used: last?.stock ? used : undefined };
    case 'store':
      // A tin that is not on this tablet keeps the words that were written down of it.
      return tin
        ? { product: tin.name, batch: tin.batch, stock: text.stock, used }
        : { product: given(text.productName), batch: given(text.batch), stock: given(text.stock), used };
    case 'other':
      return { product: given(text.productName), batch: given(text.batch), stock: undefined, used: undefined };
    case 'none':
      return { product: undefined, batch: undefined, stock: undefined, used: undefined };
  }
};

/** What the deed takes, of an entry without faults. Coats go with what lays a coating. */
export const entryFields = (
  text: EntryText,
  last: LastProduct | undefined,
  tin: BodyOf<'product'> | undefined,
  currency: string,
): TreatmentFields => {
  const cost = costOf(text, currency);
  const people = peopleKept(text.people.filter(({ role }) => role.trim() !== '')).map(({ hours, ...who }) => {
    const of = typedHours(hours);
    return { ...who, ...(of === undefined ? {} : { hours: of }) };
  });
  return {
    type: text.type,
    date: text.rough ? text.roughly.trim() : text.day,
    ended: given(text.ended),
    zones: text.whole ? [] : text.zones,
    ...putOn(text, last, tin),
    coats: treatmentOf(text.type)?.coats ? Number(text.coats) : undefined,
    by: given(text.by),
    people: some(people),
    weather: given(text.weather),
    cost: cost && isMoney(cost) ? cost : undefined,
    campaign: given(text.campaign),
    takenAway: typedMeasure('area', text.takenAway),
    left: given(text.left),
    photosBefore: some(text.photosBefore),
    photosAfter: some(text.photosAfter),
    note: given(text.note),
  };
};
