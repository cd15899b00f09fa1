import type { Folder } from '../../device/folder';
import type { SegmentRead } from '../../engine/exchange';
import type { Entry } from '../../engine/record';
import type { Desk } from '../desk';
import { inTurn } from '../inTurn';
import { refuse } from '../outcome';
import { type Fault, type Segment, setSegment } from './joined';
import { stepDeed, stepFault, stepRefusal } from './reasonCodes';
import { segmentOf } from './segmentOf';
import type { Stepping } from './step';

export interface ReadIn {
  readonly took: number;
  readonly erased: number;
  /** Ids taken in, by path, of files that were not known. */
  readonly segments: ReadonlyMap<string, Segment>;
  /** Paths of files in which something was not here before. */
  readonly news: ReadonlySet<string>;
  readonly faults: readonly Fault[];
}

interface Got extends SegmentRead {
  readonly collection: string;
  readonly segment: Segment;
}

/** Files read, judged and taken in together: a usual step is one such bite, and none keeps a finger waiting. */
const filesAtOnce = 10;

/**
 * Reads files of the folder that are not known here, and takes in what they hold, some files at a time, every file whole or not at all.
 * What cannot be read is passed over and said; it is tried again with each step.
 */
export const readIn = async (
  desk: Desk,
  folder: Folder,
  paths: readonly string[],
  /** Nothing was ever read or written in this folder. */
  first: boolean,
  { heard, signal }: Stepping,
): Promise<ReadIn> => {
  const { readSegment } = await import('../../engine/exchange');
  const into: Into = { took: 0, erased: 0, segments: new Map(), news: new Set(), faults: [] };
  let waiting: readonly Got[] = [];
  let got: Got[] = [];
  const takeGot = async () => {
    const collection = await collectionOf(desk, got, first && into.segments.size === 0);
    const own = ofCollection(got, collection, into);
    got = [];
    // On its own first: what waits for a file not read yet need not be judged again with each bite.
    waiting = [...waiting, ...(await fitIn(desk, own, collection, into))];
  };
  for (const [i, path] of paths.entries()) {
    heard?.('reading', i, paths.length);
    const bytes = await folder.get(path, signal);
    // Taken away since it was listed: what it held lies in another by now.
    if (!bytes) continue;
    const read = readSegment(bytes);
    if (read.ok) got.push({ path, ...read, segment: { ...(await segmentOf(bytes, read.entries)), seen: true } });
    else {
      const [problem] = read.problems;
      into.faults.push({ fault: stepFault('step: file passed over', { path }), ...(problem ? { problem } : {}) });
    }
    if (got.length === filesAtOnce) await takeGot();
    signal?.throwIfAborted();
  }
  await takeGot();
  for (const { path } of await fitIn(desk, waiting, desk.collection, into))
    into.faults.push({ fault: stepFault('step: file waits', { path }) });
  return into;
};

interface Into extends ReadIn {
  took: number;
  erased: number;
  readonly segments: Map<string, Segment>;
  readonly news: Set<string>;
  readonly faults: Fault[];
}

const ofCollection = (got: readonly Got[], collection: string, { faults }: Into): readonly Got[] =>
  got.filter((each) => {
    if (each.collection !== collection)
      faults.push({ fault: stepFault('step: file of another collection', { path: each.path }) });
    return each.collection === collection;
  });

/** Takes in, in one transaction, all of these files that fit together with what is here. Gives those that wait for others. */
const fitIn = async (desk: Desk, got: readonly Got[], collection: string, into: Into): Promise<readonly Got[]> => {
  if (got.length === 0) return [];
  const { fitTogether, idsSpokenOf } = await import('../../engine/exchange');
  const here = new Map<string, Entry>();
  for (const entry of [...(await desk.store.entriesWith(idsSpokenOf(got))), ...(await desk.store.erasures())])
    here.set(entry.id, entry);
  const { fitting, fresh, notFitting } = fitTogether(got, here);
  const waits = new Set<string>();
  for (const { path, waits: later, problem } of notFitting)
    if (later) waits.add(path);
    else into.faults.push({ fault: stepFault('step: file passed over', { path }), problem });
  if (fresh.length > 0) {
    const deed = { id: desk.newId(), name: stepDeed(fresh.length), at: desk.now() };
    const options = { collection, shared: true as const };
    const taken = await inTurn(desk.store, () => desk.store.takeIn(fresh, deed, options));
    into.took += taken.added;
    into.erased += taken.erased;
    if (taken.copiedTablet) into.faults.push({ fault: stepFault('step: copied tablet', {}) });
  }
  const fits = new Set(fitting.map(({ path }) => path));
  const newIds = new Set(fresh.map(({ id }) => id));
  for (const { path, segment } of got) {
    if (!fits.has(path)) continue;
    await setSegment(desk, path, segment);
    into.segments.set(path, segment);
    if (segment.ids.some((id) => newIds.has(id))) into.news.add(path);
  }
  return got.filter(({ path }) => waits.has(path));
};

/** The collection to keep in step. One the device does not have is taken on only where nothing was entered here yet. */
const collectionOf = async (desk: Desk, got: readonly Got[], first: boolean): Promise<string> => {
  const asked = first ? got : got.filter(({ collection }) => collection === desk.collection);
  const said = asked.flatMap(({ entries }) => entries.filter(({ kind }) => kind === 'collection'));
  if (said.some(({ body }) => body.invented === true)) refuse(stepRefusal('step: invented', {}));
  const [theirs, ...more] = new Set(got.map(({ collection }) => collection));
  if (!first || theirs === undefined) return desk.collection;
  if (more.length > 0) refuse(stepRefusal('step: several collections', {}));
  if (theirs === desk.collection || (await desk.store.held()).entries === 0) return theirs;
  const here = (await desk.store.current(desk.collection))?.lead.body.name;
  const named = said.filter(({ thing }) => thing === theirs).at(-1)?.body.name;
  return refuse(stepRefusal('step: other collection', { here: String(here ?? ''), theirs: String(named ?? '') }));
};
