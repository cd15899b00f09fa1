import type { Entry } from '../../engine/record';

/** One field of a thing as two versions have it, and as it stood before they parted. */
export interface FieldRow {
  readonly field: string;
  readonly before: unknown;
  readonly versions: readonly [unknown, unknown];
  /** 'same' in both; 'one' or 'two': only that version changed it; 'both': each changed it in its own way. */
  readonly changedBy: 'same' | 'one' | 'two' | 'both';
}

const same = (a: unknown, b: unknown): boolean => {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...keys].every((k) => same((a as Record<string, unknown>)[k], (b as Record<string, unknown>)[k]));
};

const ancestorsOf = (entry: Entry, byId: ReadonlyMap<string, Entry>): Map<string, number> => {
  const depth = new Map<string, number>();
  let edge = [...entry.replaces];
  for (let d = 1; edge.length > 0; d += 1) {
    const next: string[] = [];
    for (const id of edge) {
      if (depth.has(id)) continue;
      depth.set(id, d);
      next.push(...(byId.get(id)?.replaces ?? []));
    }
    edge = next;
  }
  return depth;
};

/** The nearest entry that both versions replace, or undefined where they were begun apart. */
export const commonAncestor = (entries: readonly Entry[], one: Entry, two: Entry): Entry | undefined => {
  const byId = new Map(entries.map((e) => [e.id, e]));
  const ofOne = ancestorsOf(one, byId);
  const ofTwo = ancestorsOf(two, byId);
  let best: { id: string; far: number } | undefined;
  for (const [id, d] of ofOne) {
    const other = ofTwo.get(id);
    if (other === undefined) continue;
    const far = d + other;
    if (!best || far < best.far || (far === best.far && id < best.id)) best = { id, far };
  }
  return best && byId.get(best.id);
};

/**
 * Fields of both versions, those to choose first. Where they were begun apart, a field only one of them has counts
 * as changed by that one.
 */
export const sideBySide = (one: Entry, two: Entry, before: Entry | undefined): FieldRow[] => {
  const past = before?.body ?? {};
  const fields = [...new Set([...Object.keys(one.body), ...Object.keys(two.body)])];
  const rows = fields.map((field): FieldRow => {
    const a = one.body[field];
    const b = two.body[field];
    const p = past[field];
    const changedBy = same(a, b) ? 'same' : same(b, p) ? 'one' : same(a, p) ? 'two' : 'both';
    return { field, before: p, versions: [a, b], changedBy };
  });
  const rank = { both: 0, one: 1, two: 1, same: 2 };
  return rows.sort((x, y) => rank[x.changedBy] - rank[y.changedBy]);
};

export type Choice = 'one' | 'two';

/** What is chosen beforehand: the side that changed a field alone. */
export const chosenBeforehand = (rows: readonly FieldRow[]): Record<string, Choice> =>
  Object.fromEntries(
    rows.flatMap((r) => (r.changedBy === 'one' || r.changedBy === 'two' ? [[r.field, r.changedBy] as const] : [])),
  );

/** The body that settles it, or undefined while a field both changed is not chosen. */
export const settledBody = (
  rows: readonly FieldRow[],
  choices: Readonly<Record<string, Choice>>,
): Record<string, unknown> | undefined => {
  const body: Record<string, unknown> = {};
  for (const row of rows) {
    const side = row.changedBy === 'same' ? 'one' : choices[row.field];
    if (!side) return undefined;
    const value = row.versions[side === 'one' ? 0 : 1];
    if (value !== undefined) body[row.field] = value;
  }
  return body;
};
