import type { Entry } from '../record';

const same = (a: unknown, b: unknown): boolean => {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) || Array.isArray(b)) {
    return Array.isArray(a) && Array.isArray(b) && a.length === b.length && a.every((v, i) => same(v, b[i]));
  }
  const one = a as Record<string, unknown>;
  const two = b as Record<string, unknown>;
  const names = (of: Record<string, unknown>) => Object.keys(of).filter((name) => of[name] !== undefined);
  const own = names(one);
  return (
    own.length === names(two).length && own.every((name) => Object.hasOwn(two, name) && same(one[name], two[name]))
  );
};

const inOrder = (entry: Entry): Entry => ({ ...entry, replaces: [...entry.replaces].sort() });

/** True where two entries would be written as the same bytes. */
export const sameContent = (a: Entry, b: Entry): boolean => a === b || same(inOrder(a), inOrder(b));
