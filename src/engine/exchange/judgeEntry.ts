import type { z } from 'zod';
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

/** A problem Zod found, as a reason of ours. Checks of our own name their code in the message. */
const reasonFor = (issue: Issue, value: unknown, where: string, entry: number, kind: string): Reason => {
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
      const least = issue.code === 'too_small' ? Number(issue.minimum) : '';
      const most = issue.code === 'too_big' ? Number(issue.maximum) : '';
      return because('number out of range', { ...place, found, least, most });
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
  const judged = bodySchemas[entry.kind as KindOfThing].safeParse(entry.body);
  const issue = judged.error?.issues[0];
  if (issue) return reasonFor(issue, entry.body, `${where}.body`, n, entry.kind);
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
  const judged = entrySchema.safeParse(value);
  const kind = typeof value === 'object' && value !== null && 'kind' in value ? quoted(value.kind) : '';
  const issue = judged.error?.issues[0];
  if (issue) return reasonFor(issue, value, where, n, kind);
  const entry = value as Entry;
  if (!entry.thing.startsWith(`${entry.kind}/`)) {
    const found = quoted(entry.thing);
    return because('name does not fit', { where: `${where}.thing`, entry: n, kind, found, fitting: `${entry.kind}/` });
  }
  return isKnown(entry) && !saysNothing(entry) ? judgeBody(entry, where, n) : undefined;
};
