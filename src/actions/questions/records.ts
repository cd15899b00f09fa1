import {
  type BodyOf,
  type CollectionOwn,
  gather,
  type KnownEye,
  nameOf,
  type SculptureRecord,
} from '../../engine/record';
import type { Desk } from '../desk';
import { refuse } from '../outcome';
import { refusal } from '../reasonCodes';
import { eyesKnown } from './eyesKnown';

/** Whole records kept in memory, the last ones read. */
const keptRecords = 4;

interface Kept {
  readonly stamp: string;
  readonly record: Promise<SculptureRecord>;
}

const shelves = new WeakMap<object, Map<string, Kept>>();

/**
 * The record of one sculpture, read once and the same reference until something within it changes, or something the collection owns
 * that moves a figure: its weights and rules, the spread of an eye.
 */
export const recordOf = async (desk: Desk, sculpture: string): Promise<SculptureRecord> => {
  const eyes = await eyesInUse(desk);
  const shelf = shelves.get(desk.store) ?? new Map<string, Kept>();
  shelves.set(desk.store, shelf);
  const spreads = Object.entries(eyes).map(([who, { sd }]) => `${who} ${sd}`);
  const stamp = [desk.store.headsOf(sculpture), desk.store.headsOf(desk.collection), ...spreads].join(' ');
  const kept = shelf.get(sculpture);
  shelf.delete(sculpture);
  const fresh = kept?.stamp === stamp ? kept : { stamp, record: readRecord(desk, sculpture, eyes) };
  if (fresh !== kept) fresh.record.catch(() => shelf.delete(sculpture));
  shelf.set(sculpture, fresh);
  for (const oldest of [...shelf.keys()].slice(0, Math.max(0, shelf.size - keptRecords))) shelf.delete(oldest);
  return fresh.record;
};

/** Read by index and put together; nothing is kept. */
const readRecord = async (desk: Desk, sculpture: string, eyes: CollectionOwn['eyes']): Promise<SculptureRecord> => {
  const [currents, scale, holdRules] = await Promise.all([
    desk.store.within(sculpture),
    scaleSet(desk),
    holdRulesSet(desk),
  ]);
  return gather(currents, { scale, holdRules, eyes }) ?? refuse(refusal('not here', { thing: sculpture }));
};

/** Eyes as the sums read them: a spread, and what it rests on. */
const eyesInUse = async (desk: Desk): Promise<CollectionOwn['eyes']> =>
  Object.fromEntries(
    Object.entries((await eyesKnown(desk)).eyes).map(([who, { sd, pairs, patches }]): [string, KnownEye] => [
      who,
      { sd, pairs, patches },
    ]),
  );

/** What the collection set for itself of weights, or null. */
export const scaleSet = async (desk: Desk): Promise<BodyOf<'scale'> | null> => {
  const current = await desk.store.current(nameOf.scale(desk.collection));
  return current && !current.gone ? (current.lead.body as BodyOf<'scale'>) : null;
};

/** What it set for itself about coatings, or null. */
const holdRulesSet = async (desk: Desk): Promise<BodyOf<'holdRules'> | null> => {
  const current = await desk.store.current(nameOf.holdRules(desk.collection));
  return current && !current.gone ? (current.lead.body as BodyOf<'holdRules'>) : null;
};
