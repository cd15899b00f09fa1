import type * as z from 'zod/mini';
import { type Entry, isKnown, type KindOfThing, type Reason } from '../record';
import { bodySchemas, entrySchema } from '../record/schemas';
import { fittingName, fittingWithin, nameFits } from './fittingName';
import { because, quoted } from './reasonCodes';
import { referencesOf } from './references';

type Issue = z.core.$ZodIssue;

const at = (value: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>((v, name) => (v as Record<PropertyKey, unknown> | undefined)?.[name], value);

const spelled = (path: readonly PropertyKey[]): string =>
  path.map((name) => (typeof name === 'number' ? `[${name}]` : `.${String(name)}`)).join('');

const dateFormats = new Set(['date', 'datetime']);

type Judge = (value: unknown) => readonly Issue[];

const withNumber = (value: unknown, [first, ...rest]: readonly PropertyKey[], put: number): unknown => {
  if (first === undefined) return put;
  const copy = (Array.isArray(value) ? [...value] : { ...(value as object) }) as Record<PropertyKey, unknown>;
  copy[first] = withNumber(copy[first], rest, put);
  return copy;
};

/** Between what a number may lie, asked of the schema itself by numbers no field allows. */
const boundsAt = (judge: Judge, value: unknown, path: readonly PropertyKey[]) => {
  const here = (put: number) => judge(withNumber(value, path, put)).filter((i) => spelled(i.path) === spelled(path));
  const least = here(-9e15).flatMap((i) => (i.code === 'too_small' ? [Number(i.minimum)] : []));
  const most = here(9e15).flatMap((i) => (i.code === 'too_big' ? [Number(i.maximum)] : []));
  return {
    least: least.length > 0 ? Math.max(...least) : 'any number',
    most: most.length > 0 ? Math.min(...most) : 'any number',
  };
};

/** A problem Zod found, as a reason of ours. Checks of our own name their code in the message. */
const reasonFor = (issue: Issue, judge: Judge, value: unknown, where: string, entry: number, kind: string): Reason => {
  const place = { where: where + spelled(issue.path), entry, kind };
  const wrong = at(value, issue.path);
  const found = quoted(wrong);
  if (wrong === undefined) return because('value missing', place);
  switch (issue.code) {
    case 'invalid_value':
      return because('word not known', { ...place, found });
    case 'invalid_format':
      if (dateFormats.has(issue.format)) return because('not a date', { ...place, found });
      return because('not an id', { ...place, found });
    case 'too_big':
    case 'too_small': {
      if (typeof wrong !== 'number') return because('too long or too short', place);
      return because('number out of range', { ...place, found, ...boundsAt(judge, value, issue.path) });
    }
    case 'custom':
      if (issue.message === 'range ends out of order' || issue.message === 'shares do not add up') {
        return because(issue.message, place);
      }
      return because('not a date', { ...place, found });
    default:
      return because('wrong sort of value', { ...place, found });
  }
};

const judgeBody = (entry: Entry, where: string, n: number): Reason | undefined => {
  const judge: Judge = (body) => bodySchemas[entry.kind as KindOfThing].safeParse(body).error?.issues ?? [];
  const [issue] = judge(entry.body);
  if (issue) return reasonFor(issue, judge, entry.body, `${where}.body`, n, entry.kind);
  const place = { entry: n, kind: entry.kind };
  if (!nameFits(entry)) {
    const found = quoted(entry.thing);
    return because('name does not fit', {
      ...place,
      where: `${where}.thing`,
      found,
      fitting: quoted(fittingName(entry)),
    });
  }
  const fitting = fittingWithin(entry);
  if (fitting !== undefined && entry.within !== fitting) {
    const found = quoted(entry.within);
    return because('within another', { ...place, where: `${where}.within`, found, fitting: quoted(fitting) });
  }
  for (const { field, name, kinds } of referencesOf(entry)) {
    const at = { ...place, where: `${where}.body.${field}` };
    if (kinds.length > 0 && !kinds.some((kind) => name.startsWith(`${kind}/`))) {
      return because('refers to another kind', { ...at, found: quoted(name), fitting: kinds.join(', ') });
    }
    if (name === entry.thing && field !== 'sculpture') return because('refers to itself', at);
  }
  return undefined;
};

/** An entry that takes a thing away may leave its body empty. */
const saysNothing = (entry: Entry): boolean => entry.gone === true && Object.keys(entry.body).length === 0;

/**
 * Judges one entry by itself: the first problem, or undefined. Nothing of it is changed: what came is what is kept. Kinds and
 * versions of a body this code does not know are only judged as entries. `index` is its place in the file, from 0.
 */
export const judgeEntry = (value: unknown, index: number): Reason | undefined => {
  const where = `entries[${index}]`;
  const n = index + 1;
  const judge: Judge = (v) => entrySchema.safeParse(v).error?.issues ?? [];
  const kind = typeof value === 'object' && value !== null && 'kind' in value ? quoted(value.kind) : '';
  const [issue] = judge(value);
  if (issue) return reasonFor(issue, judge, value, where, n, kind);
  const entry = value as Entry;
  if (!entry.thing.startsWith(`${entry.kind}/`)) {
    const found = quoted(entry.thing);
    return because('name does not fit', { where: `${where}.thing`, entry: n, kind, found, fitting: `${entry.kind}/` });
  }
  return isKnown(entry) && !saysNothing(entry) ? judgeBody(entry, where, n) : undefined;
};
