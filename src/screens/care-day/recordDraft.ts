import type { TreatmentFields } from '../../actions';
import { type BodyOf, type SculptureRecord, type Thing, vagueDateOrder } from '../../engine/record';
import { treatmentOf } from '../../engine/trade';
import { typedHours, typedNumber } from '../../words';
import type { HoursSaid } from '../parts/peopleSaid';

export const kindsOfDay = ['wash', 'wax', 'spot wax'] as const;
export type KindOfDay = (typeof kindsOfDay)[number];

/** What the sheet of the day holds. */
export interface RecordDraft {
  readonly type: KindOfDay;
  readonly whole: boolean;
  readonly zones: readonly string[];
  /** Thing of the store, or ''. */
  readonly tin: string;
  readonly coats: string;
  readonly used: string;
  readonly people: readonly HoursSaid[];
  readonly left: string;
  readonly why: string;
}

/** As last time, but for how long it took and how much went: those are of the day. */
export const draftOfDay = (record: SculptureRecord, type: KindOfDay, tin: string): RecordDraft => {
  const last = [...record.treatments]
    .sort((a, b) => (vagueDateOrder(a.body.date) < vagueDateOrder(b.body.date) ? 1 : -1))
    .find(({ body }) => body.type === type)?.body;
  return {
    type,
    whole: (last?.zones.length ?? 0) === 0 && type !== 'spot wax',
    zones: [],
    tin: type === 'wash' ? '' : tin,
    coats: String(last?.coats ?? 1),
    used: '',
    people: (last?.people ?? []).map(({ role, name }) => ({ role, name, hours: '' })),
    left: '',
    why: '',
  };
};

const given = (text: string): string | undefined => text.trim() || undefined;
const isReadOrNone = (text: string, read: number | undefined): boolean => text.trim() === '' || read !== undefined;

/** What is wrong with it, by field; nothing where it can be written down. */
export const wrongWith = (draft: RecordDraft): ReadonlySet<'zones' | 'used' | 'hours' | 'role'> =>
  new Set([
    ...(draft.whole || draft.zones.length > 0 ? [] : (['zones'] as const)),
    ...(isReadOrNone(draft.used, typedNumber(draft.used)) ? [] : (['used'] as const)),
    ...(draft.people.every(({ hours }) => isReadOrNone(hours, typedHours(hours))) ? [] : (['hours'] as const)),
    ...(draft.people.every(({ role, hours }) => role.trim() !== '' || hours.trim() === '') ? [] : (['role'] as const)),
  ]);

/** What the deed takes. */
export const fieldsOfDay = (
  draft: RecordDraft,
  date: string,
  product: Thing<'product'> | undefined,
  reading: Thing<'weather'> | undefined,
  noteOn: (why: string) => string,
): TreatmentFields => {
  const people: NonNullable<BodyOf<'treatment'>['people']> = draft.people
    .filter(({ role }) => role.trim() !== '')
    .map(({ role, name, hours }) => {
      const of = typedHours(hours);
      return { role: role.trim(), ...(name ? { name } : {}), ...(of === undefined ? {} : { hours: of }) };
    });
  const used = product ? typedNumber(draft.used) : undefined;
  const why = given(draft.why);
  return {
    type: draft.type,
    date,
    zones: draft.whole ? [] : draft.zones,
    product: product?.body.name,
    batch: product?.body.batch,
    stock: product?.thing,
    used,
    coats: treatmentOf(draft.type)?.coats ? Number(draft.coats) : undefined,
    people: people.length > 0 ? people : undefined,
    weather: reading?.thing,
    left: given(draft.left),
    note: why && noteOn(why),
  };
};
