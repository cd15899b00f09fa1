import { type BodyOf, gather, nameOf, type SculptureRecord } from '../../engine/record';
import type { Desk } from '../desk';
import { refuse } from '../outcome';
import { refusal } from '../reasonCodes';

/** Whole records kept in memory, the last ones read. */
const keptRecords = 4;

interface Kept {
  readonly stamp: string;
  readonly record: Promise<SculptureRecord>;
}

const shelves = new WeakMap<object, Map<string, Kept>>();

/** What a record rests on: everything within the sculpture, and the collection's scale. */
export const recordStamp = (desk: Desk, sculpture: string): string =>
  `${desk.store.counterOf(sculpture)} ${desk.store.counterOf(desk.collection)}`;

/** The record of one sculpture, read once and the same reference until something within it changes. */
export const recordOf = (desk: Desk, sculpture: string): Promise<SculptureRecord> => {
  const shelf = shelves.get(desk.store) ?? new Map<string, Kept>();
  shelves.set(desk.store, shelf);
  const stamp = recordStamp(desk, sculpture);
  const kept = shelf.get(sculpture);
  shelf.delete(sculpture);
  const fresh = kept?.stamp === stamp ? kept : { stamp, record: readRecord(desk, sculpture) };
  if (fresh !== kept) fresh.record.catch(() => shelf.delete(sculpture));
  shelf.set(sculpture, fresh);
  for (const oldest of [...shelf.keys()].slice(0, Math.max(0, shelf.size - keptRecords))) shelf.delete(oldest);
  return fresh.record;
};

/** Read by index and put together; nothing is kept. */
export const readRecord = async (desk: Desk, sculpture: string): Promise<SculptureRecord> => {
  const [currents, scale] = await Promise.all([desk.store.within(sculpture), scaleSet(desk)]);
  return gather(currents, { scale }) ?? refuse(refusal('not here', { thing: sculpture }));
};

/** What the collection set for itself, or null. */
export const scaleSet = async (desk: Desk): Promise<BodyOf<'scale'> | null> => {
  const current = await desk.store.current(nameOf.scale(desk.collection));
  return current && !current.gone ? (current.lead.body as BodyOf<'scale'>) : null;
};
