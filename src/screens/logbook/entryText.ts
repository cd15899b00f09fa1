import type { TreatmentFields } from '../../actions';
import type { BodyOf } from '../../engine/record';
import { treatmentOf } from '../../engine/trade';

/** What the entry form holds. */
export interface EntryText {
  readonly type: string;
  /** Only roughly known: words or a year in place of a day. */
  readonly rough: boolean;
  readonly day: string;
  readonly roughly: string;
  readonly whole: boolean;
  readonly zones: readonly string[];
  readonly product: 'same' | 'other' | 'none';
  readonly productName: string;
  readonly coats: string;
  readonly by: string;
  readonly note: string;
}

const isDay = (date: string): boolean => /^\d{4}-\d{2}-\d{2}$/.test(date);

export const newEntry = (today: string): EntryText => ({
  type: 'wax',
  rough: false,
  day: today,
  roughly: '',
  whole: true,
  zones: [],
  product: 'none',
  productName: '',
  coats: '1',
  by: '',
  note: '',
});

export const entryTextOf = (body: BodyOf<'treatment'>, lastProduct: string | undefined, today: string): EntryText => ({
  type: body.type,
  rough: !isDay(body.date),
  day: isDay(body.date) ? body.date : today,
  roughly: isDay(body.date) ? '' : body.date,
  whole: body.zones.length === 0,
  zones: body.zones,
  product: !body.product ? 'none' : body.product === lastProduct ? 'same' : 'other',
  productName: body.product ?? '',
  coats: String(body.coats ?? 1),
  by: body.by ?? '',
  note: body.note ?? '',
});

/** What the deed takes, or undefined while the day or the zones are missing. Coats and product go with what lays a coating. */
export const entryFields = (text: EntryText, lastProduct: string | undefined): TreatmentFields | undefined => {
  const date = text.rough ? text.roughly.trim() : text.day;
  if (!date || (!text.whole && text.zones.length === 0)) return undefined;
  const product = { same: lastProduct, other: text.productName.trim() || undefined, none: undefined }[text.product];
  return {
    type: text.type,
    date,
    zones: text.whole ? [] : text.zones,
    product,
    coats: treatmentOf(text.type)?.coats ? Number(text.coats) : undefined,
    by: text.by.trim() || undefined,
    note: text.note.trim() || undefined,
  };
};
