import type { Entry } from './entry';

/**
 * Whether two values would be written as the same bytes of JSON: the order of names says nothing, a field without a value is no
 * field, minus nought is nought. Depth is bounded: what came in was checked for it.
 */
export const sameContent = (a: unknown, b: unknown): boolean => {
  if (a === b || Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) || Array.isArray(b)) {
    return Array.isArray(a) && Array.isArray(b) && a.length === b.length && a.every((v, i) => sameContent(v, b[i]));
  }
  const one = a as Record<string, unknown>;
  const two = b as Record<string, unknown>;
  const own = said(one);
  return (
    own.length === said(two).length &&
    own.every((name) => Object.hasOwn(two, name) && sameContent(one[name], two[name]))
  );
};

const said = (of: Record<string, unknown>): string[] => Object.keys(of).filter((name) => of[name] !== undefined);

const inOrder = (entry: Entry): Entry => ({ ...entry, replaces: [...entry.replaces].sort() });

/** The one rule for "the same entry": two that a survey file would hold as the same bytes. `replaces` is a set. */
export const sameEntry = (a: Entry, b: Entry): boolean => a === b || sameContent(inOrder(a), inOrder(b));
