import type { Entry } from '../../engine/record';

const names = (value: unknown, vanishing: ReadonlySet<string>): boolean => {
  if (typeof value === 'string') return vanishing.has(value);
  if (typeof value !== 'object' || value === null) return false;
  return Object.values(value).some((part) => names(part, vanishing));
};

/** Whether an entry would be left hanging if entries went away, and with them the things they alone speak of. */
export const restsOn =
  (ids: ReadonlySet<string>, vanishing: ReadonlySet<string>) =>
  (entry: Entry): boolean =>
    entry.replaces.some((id) => ids.has(id)) ||
    (entry.restores !== undefined && ids.has(entry.restores)) ||
    vanishing.has(entry.within) ||
    names(entry.body, vanishing);
