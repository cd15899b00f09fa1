import type { BodyOf } from '../../engine/record';
import { measureTyped, numberTyped, typedMeasure, typedNumber } from '../../words';

type Body = BodyOf<'product'>;

/** What the form of a product holds, as typed. */
export interface ProductText {
  readonly name: string;
  readonly sort: string;
  readonly solvent: string;
  readonly additives: string;
  readonly batch: string;
  readonly opened: string;
  readonly expires: string;
  readonly unit: string;
  readonly left: string;
  readonly counted: string;
  readonly least: string;
  readonly gramsPerUnit: string;
  readonly surfaceFrom: string;
  readonly surfaceTo: string;
  readonly sheet: string;
  readonly sheetDate: string;
  readonly ended: string;
  readonly note: string;
}

const numbers = ['left', 'least', 'gramsPerUnit', 'surfaceFrom', 'surfaceTo'] as const;
const texts = ['solvent', 'additives', 'batch', 'opened', 'expires', 'sheet', 'sheetDate', 'ended', 'note'] as const;

export const isDegrees = (field: string): boolean => field === 'surfaceFrom' || field === 'surfaceTo';

/** A new tin, counted today. */
export const newProduct = (today: string): ProductText => ({
  ...(Object.fromEntries([...numbers, ...texts, 'name', 'unit'].map((field) => [field, ''])) as unknown as ProductText),
  sort: 'microcrystalline',
  counted: today,
});

export const productText = (body: Body, today: string): ProductText => ({
  ...newProduct(today),
  ...(Object.fromEntries(
    [...numbers, ...texts, 'name', 'sort', 'unit', 'counted'].flatMap((field) => {
      const value = body[field];
      if (value === undefined) return [];
      return [[field, typed(field, value)]];
    }),
  ) as Partial<ProductText>),
});

const typed = (field: string, value: unknown): string => {
  if (isDegrees(field)) return measureTyped('temperature', Number(value));
  return typeof value === 'number' ? numberTyped(value) : String(value);
};

const readFigure = (field: (typeof numbers)[number], text: string): number | undefined =>
  isDegrees(field) ? typedMeasure('temperature', text) : typedNumber(text);

/** Names of fields in which no number stands. */
export const wrongNumbers = (text: ProductText): ReadonlySet<string> =>
  new Set(numbers.filter((field) => text[field].trim() !== '' && readFigure(field, text[field]) === undefined));

/** The body as it is kept. */
export const productBody = (text: ProductText): Body => {
  const fields: Record<string, unknown> = { name: text.name.trim(), sort: text.sort };
  for (const field of texts) fields[field] = text[field].trim() || undefined;
  for (const field of numbers) fields[field] = readFigure(field, text[field]);
  fields.unit = text.unit || undefined;
  fields.counted = text.left.trim() === '' ? undefined : text.counted || undefined;
  return fields as Body;
};
