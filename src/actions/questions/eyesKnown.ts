import type { EyeKnown, Rerated } from '../../engine/eye';
import { asThing, byWithin, type Current, type Thing } from '../../engine/record';
import type { Desk } from '../desk';

/** What is known of the eyes of a collection's surveyors, and what it rests on. */
export interface EyesKnown {
  /** By thing name of the surveyor; who is not named is not known yet. */
  readonly eyes: Readonly<Record<string, EyeKnown>>;
  /** All eye checks, oldest first. */
  readonly checks: readonly Thing<'eyeCheck'>[];
}

const asked = ['rerating', 'round', 'eyeCheck'] as const;

interface Shelf {
  /** How each work stood, and what was asked again or checked in it, when it was last read. */
  readonly read: Map<string, { readonly heads: string; readonly rows: readonly Current[] }>;
  known: EyesKnown;
  reading?: Promise<unknown> | undefined;
}

const shelves = new WeakMap<object, Shelf>();
const nothing: EyesKnown = { eyes: {}, checks: [] };

/**
 * Known eyes of the whole collection, the same reference until one of them changes. All works are read once by index; after that
 * only works in which something changed, and of those no more than what was asked again.
 */
export const eyesKnown = async (desk: Desk): Promise<EyesKnown> => {
  const shelf: Shelf = shelves.get(desk.store) ?? { read: new Map(), known: nothing };
  shelves.set(desk.store, shelf);
  const before = shelf.reading ?? Promise.resolve();
  const mine = before.then(() => bringUpToDate(desk, shelf));
  shelf.reading = mine.catch(() => undefined);
  await mine;
  return shelf.known;
};

const bringUpToDate = async (desk: Desk, shelf: Shelf): Promise<void> => {
  const heads = desk.store.allHeads();
  const moved = [...heads].filter(([within, word]) => shelf.read.get(within)?.heads !== word);
  if (moved.length === 0) return;
  const all = shelf.read.size === 0 ? await everyRow(desk) : undefined;
  let changed = false;
  for (const [within, word] of moved) {
    const rows = all ? (all.get(within) ?? []) : await desk.store.within(within, asked);
    if (!sameRows(shelf.read.get(within)?.rows ?? [], rows)) changed = true;
    shelf.read.set(within, { heads: word, rows });
  }
  if (changed) shelf.known = await knownFrom([...shelf.read.values()].flatMap(({ rows }) => rows));
};

const everyRow = async (desk: Desk): Promise<ReadonlyMap<string, readonly Current[]>> =>
  byWithin((await Promise.all(asked.map((kind) => desk.store.ofKind(kind)))).flat());

const sameRows = (a: readonly Current[], b: readonly Current[]): boolean =>
  a.length === b.length && a.every(({ lead }, i) => lead.id === b[i]?.lead.id);

const knownFrom = async (rows: readonly Current[]): Promise<EyesKnown> => {
  const living = rows.filter(({ gone }) => !gone);
  const reratings = living.flatMap((row) => asThing(row, 'rerating') ?? []);
  const checks = living
    .flatMap((row) => asThing(row, 'eyeCheck') ?? [])
    .sort((a, b) => a.body.date.localeCompare(b.body.date) || a.lead.at.localeCompare(b.lead.at));
  if (reratings.length === 0 && checks.length === 0) return nothing;
  const surveyorOf = new Map(
    living.flatMap((row) => asThing(row, 'round') ?? []).map(({ thing, body }) => [thing, body.surveyor]),
  );
  const rerated = reratings.map(
    ({ body }): Rerated => ({ surveyor: surveyorOf.get(body.round) ?? '', ratings: body.ratings }),
  );
  // No part of the start: needed only where somebody was asked again or made a check.
  const { knownEyes } = await import('../../engine/eye');
  return {
    eyes: knownEyes(
      rerated,
      checks.map(({ body }) => body),
    ),
    checks,
  };
};
