import type { Current } from './current';
import type { Entry } from './entry';
import { currentOf } from './heads';

/**
 * The present state of a thing after one more entry, where that can be told without its history: the first entry of a thing, or one
 * that replaces the only head. Undefined for all else (two heads, a state brought back): then ask `currentOf` with all entries.
 */
export const currentAfter = (before: Current | undefined, entry: Entry): Current | undefined => {
  if (!before) return entry.replaces.length === 0 && entry.restores === undefined ? currentOf([entry]) : undefined;
  const [head, ...others] = before.heads;
  const only = others.length === 0 && entry.replaces.length === 1 && entry.replaces[0] === head;
  if (!only || entry.restores !== undefined) return undefined;
  const { thing, kind, within } = entry;
  return { thing, kind, within, lead: entry, line: before.line + 1, heads: [entry.id], gone: entry.gone === true };
};
