import type { Entry } from '../../engine/record';

/** Who changed a field since the versions parted: nobody apart (the same in all), one version alone (by its place), or several. */
export type ChangedBy = 'same' | 'several' | number;

/** One field of a thing as its versions have it, and as it stood before they parted. */
export interface FieldRow {
  readonly field: string;
  readonly before: unknown;
  /** In the order of the versions. */
  readonly values: readonly unknown[];
  readonly changedBy: ChangedBy;
}

/** Equal as JSON, whatever the order of keys. */
export const same = (a: unknown, b: unknown): boolean => {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...keys].every((key) => same((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]));
};

const changedByOf = (values: readonly unknown[], before: unknown): ChangedBy => {
  if (values.every((value) => same(value, values[0]))) return 'same';
  const changed = values.flatMap((value, i) => (same(value, before) ? [] : [i]));
  return changed.length === 1 ? (changed[0] as number) : 'several';
};

/**
 * Fields of all versions, those to choose first. Where they were begun apart there is no state before, so that a field only
 * one of them has counts as changed by that one.
 */
export const sideBySide = (versions: readonly Entry[], before: Entry | undefined): FieldRow[] => {
  const past = before?.body ?? {};
  const fields = [...new Set(versions.flatMap(({ body }) => Object.keys(body)))];
  const rows = fields.map((field): FieldRow => {
    const values = versions.map(({ body }) => body[field]);
    return { field, before: past[field], values, changedBy: changedByOf(values, past[field]) };
  });
  const place = ({ changedBy }: FieldRow) => (changedBy === 'several' ? 0 : changedBy === 'same' ? 2 : 1);
  return rows.sort((a, b) => place(a) - place(b));
};

/** Place of the version chosen for a field. */
export type Choices = Readonly<Record<string, number>>;

/** What is chosen beforehand: the side that changed a field alone. What several changed is left to the person. */
export const chosenBeforehand = (rows: readonly FieldRow[]): Choices =>
  Object.fromEntries(
    rows.flatMap(({ field, changedBy }) => (typeof changedBy === 'number' ? [[field, changedBy]] : [])),
  );

/** The body that settles it, or undefined while a field that differs is not chosen. */
export const settledBody = (rows: readonly FieldRow[], choices: Choices): Record<string, unknown> | undefined => {
  const body: Record<string, unknown> = {};
  for (const { field, values, changedBy } of rows) {
    const chosen = changedBy === 'same' ? 0 : choices[field];
    if (chosen === undefined) return undefined;
    if (values[chosen] !== undefined) body[field] = values[chosen];
  }
  return body;
};
