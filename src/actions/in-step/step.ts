import type { Folder } from '../../device/folder';
import { StoreProblem } from '../../device/storeProblem';
import { erasureOf } from '../../engine/record';
import type { Desk, Outcome } from '../desk';
import { carriedOut } from '../keeping';
import { attempt, Refused, refuse } from '../outcome';
import { folderAtHand } from './folderAtHand';
import {
  type Fault,
  type Joined,
  joinedTo,
  type Segment,
  type Stepped,
  segmentsKnown,
  setJoined,
  setSegment,
  type Writer,
} from './joined';
import { type InFolder, inFolder, numberOf, writerOf } from './listed';
import { photosBothWays } from './photosBothWays';
import { readIn } from './readIn';
import { stepFault, stepRefusal } from './reasonCodes';
import { hashOf } from './segmentOf';
import { writeOut } from './writeOut';

/** What a step is doing: reading what others wrote, writing what the folder lacks, photos both ways. */
export type Doing = 'reading' | 'writing' | 'photos';

export interface Stepping {
  heard?(doing: Doing, done: number, all: number): void;
  readonly signal?: AbortSignal;
}

const underWay = new WeakSet<Desk['store']>();

/**
 * One step: what others wrote is taken in, what the folder lacks is written, photos go both ways. Each part stands when it is done, so that
 * a step left off, or cut by the network, goes on where it was. One at a time, and only in the tab that writes.
 */
export const step = (
  desk: Desk,
  stepping: Stepping & { /** From a tap: a picked folder may be asked for again. */ readonly tapped?: boolean } = {},
): Promise<Outcome<{ readonly stepped: Stepped }>> =>
  attempt(async () => {
    if (desk.invented) refuse(stepRefusal('step: invented', {}));
    if (desk.store.mode === 'reading' && desk.store.why) refuse(desk.store.why);
    const joined = (await joinedTo(desk)) ?? refuse(stepRefusal('step: not switched on', {}));
    if (underWay.has(desk.store)) refuse(stepRefusal('step: under way already', {}));
    underWay.add(desk.store);
    try {
      const folder = await folderAtHand(desk, joined, stepping.tapped);
      return { stepped: await steppedWith(desk, folder, joined, stepping) };
    } catch (error) {
      const off = stepping.signal?.aborted === true;
      if (!off && !(error instanceof Refused) && !(error instanceof StoreProblem)) throw error;
      const reason = off ? stepRefusal('step: left off', {}) : (error as Refused | StoreProblem).reason;
      const now = await joinedTo(desk);
      // What a tab may no longer write, it may not note either.
      if (now) await setJoined(desk, { ...now, stopped: { at: desk.now(), reason } }).catch(() => undefined);
      return refuse(reason);
    } finally {
      underWay.delete(desk.store);
    }
  });

const steppedWith = async (desk: Desk, folder: Folder, joined: Joined, stepping: Stepping): Promise<Stepped> => {
  const { store } = desk;
  const listing = await inFolder(folder, stepping.signal);
  const known = await stillThere(desk, listing);
  const first = known.size === 0;
  let writer = joined.device === store.device ? joined.writer : store.device;
  const faults: Fault[] = [];
  const copied = () => {
    writer = desk.newId();
    const fault = stepFault('step: copied tablet', {});
    if (!faults.some((said) => said.fault.code === fault.code)) faults.push({ fault });
  };
  if (await ownAltered(desk, folder, known, writer, stepping.signal)) copied();
  // First files first, whoever wrote them: what one builds on has mostly been read by then.
  const unseen = listing.segments
    .filter((path) => !known.has(path))
    .sort((one, other) => numberOf(one) - numberOf(other));
  const read = await readIn(desk, folder, unseen, first, stepping);
  faults.push(...read.faults);
  for (const [path, segment] of read.segments) known.set(path, segment);
  // Written under this device's name, and not by this device.
  if ([...read.news].some((path) => writerOf(path) === writer)) copied();
  if (joined.device !== store.device) writer = store.device;

  const holding = await holdingErased(desk, known);
  const { made } = store;
  let gave = 0;
  for (;;) {
    const inIt = new Set([...known].flatMap(([path, { ids }]) => (holding.has(path) ? [] : ids)));
    const lacking = (await store.entryIds()).filter((id) => !inIt.has(id));
    const written = await writeOut(desk, folder, lacking, writer, lastOf(listing, known, writer), stepping);
    for (const [path, segment] of written.segments) known.set(path, segment);
    gave += written.gave;
    if (!written.taken) break;
    copied();
  }
  for (const path of holding) {
    await folder.remove(path, stepping.signal);
    await setSegment(desk, path, undefined);
    known.delete(path);
  }
  const moved = await photosBothWays(desk, folder, listing.photos, stepping);
  faults.push(...moved.faults);
  const { photosIn, photosOut } = moved;
  const stepped = { at: desk.now(), took: read.took, gave, photosIn, photosOut, erased: read.erased, faults };
  const held = await store.held();
  const { stopped: _, ...before } = joined;
  await setJoined(desk, {
    ...before,
    writer,
    device: store.device,
    last: stepped,
    held: { entries: held.entries, photos: held.photos },
    who: writersOf(known),
  });
  if (gave + photosOut > 0)
    await carriedOut(desk, { what: 'step', name: joined.name, entries: held.entries, photos: held.photos, made });
  return stepped;
};

/** Files known and no longer in the folder are forgotten: what was in them is written again. */
const stillThere = async (desk: Desk, { segments }: InFolder): Promise<Map<string, Segment>> => {
  const known = await segmentsKnown(desk);
  const there = new Set(segments);
  for (const path of [...known.keys()])
    if (!there.has(path)) {
      await setSegment(desk, path, undefined);
      known.delete(path);
    }
  return known;
};

/**
 * Two devices that write one name at the same moment can both be told it was theirs (a server looks, then writes): each file this device
 * wrote is held once, a step later, against what it wrote. Another content is a copied tablet's, and is read as any other's.
 */
const ownAltered = async (
  desk: Desk,
  folder: Folder,
  known: Map<string, Segment>,
  writer: string,
  signal: AbortSignal | undefined,
): Promise<boolean> => {
  let altered = false;
  for (const [path, segment] of [...known]) {
    if (segment.seen || writerOf(path) !== writer) continue;
    const bytes = await folder.get(path, signal);
    const same = bytes !== undefined && (await hashOf(bytes)) === segment.sha256;
    await setSegment(desk, path, same ? { ...segment, seen: true } : undefined);
    if (!same) known.delete(path);
    altered ||= bytes !== undefined && !same;
  }
  return altered;
};

/** Files that still hold what was erased since: what else is in them is written anew, then they go. */
const holdingErased = async (desk: Desk, known: ReadonlyMap<string, Segment>): Promise<ReadonlySet<string>> => {
  const erased = await desk.store.erased();
  if (erased.entries.size + erased.hashes.size + erased.names.size === 0) return new Set();
  const holds = ({ ids, erasable }: Segment) =>
    ids.some((id) => erased.entries.has(id)) || erasable.some((thing) => erasureOf(erased, thing) !== undefined);
  return new Set([...known].flatMap(([path, segment]) => (holds(segment) ? [path] : [])));
};

const lastOf = ({ segments }: InFolder, known: ReadonlyMap<string, Segment>, writer: string): number =>
  Math.max(0, ...[...segments, ...known.keys()].filter((path) => writerOf(path) === writer).map(numberOf));

const writersOf = (known: ReadonlyMap<string, Segment>): Writer[] => {
  const writers = new Map<string, Writer>();
  for (const [path, { at, by, ids }] of known) {
    const writer = writerOf(path);
    const before = writers.get(writer);
    const last = !before || at >= before.at ? { by, at } : { by: before.by, at: before.at };
    writers.set(writer, { writer, ...last, entries: (before?.entries ?? 0) + ids.length });
  }
  return [...writers.values()].sort((a, b) => (a.writer < b.writer ? -1 : 1));
};
