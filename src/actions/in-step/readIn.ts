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

/**
 * Reads files of the folder that are not known here, and takes in what they hold: every file whole or not at all, all of them in one
 * transaction. What cannot be read is passed over and said; it is tried again with each step.
 */
export const readIn = async (
  desk: Desk,
  folder: Folder,
  paths: readonly string[],
  /** Nothing was ever read or written in this folder. */
  first: boolean,
  { heard, signal }: Stepping,
): Promise<ReadIn> => {
  const { fitTogether, idsSpokenOf, readSegment } = await import('../../engine/exchange');
  const faults: Fault[] = [];
  const got: Got[] = [];
  for (const [i, path] of paths.entries()) {
    heard?.('reading', i, paths.length);
    const bytes = await folder.get(path, signal);
    // Taken away since it was listed: what it held lies in another by now.
    if (!bytes) continue;
    const read = readSegment(bytes);
    if (read.ok) got.push({ path, ...read, segment: { ...(await segmentOf(bytes, read.entries)), seen: true } });
    else faults.push({ fault: stepFault('step: file passed over', { path }), ...problemOf(read.problems[0]) });
  }
  const collection = await collectionOf(desk, got, first);
  const own = got.filter((each) => each.collection === collection);
  for (const { path } of got.filter((each) => each.collection !== collection))
    faults.push({ fault: stepFault('step: file of another collection', { path }) });

  const here = new Map<string, Entry>();
  for (const entry of [...(await desk.store.entriesWith(idsSpokenOf(own))), ...(await desk.store.erasures())])
    here.set(entry.id, entry);
  const { fitting, fresh, notFitting } = fitTogether(own, here);
  for (const { path, waits, problem } of notFitting)
    faults.push(
      waits
        ? { fault: stepFault('step: file waits', { path }) }
        : { fault: stepFault('step: file passed over', { path }), problem },
    );
  signal?.throwIfAborted();
  const taken = await takeIn(desk, fresh, collection);
  if (taken.copied) faults.push({ fault: stepFault('step: copied tablet', {}) });
  const fits = new Set(fitting.map(({ path }) => path));
  const segments = new Map(own.flatMap(({ path, segment }) => (fits.has(path) ? [[path, segment] as const] : [])));
  for (const [path, segment] of segments) await setSegment(desk, path, segment);
  const newIds = new Set(fresh.map(({ id }) => id));
  const news = new Set([...segments].flatMap(([path, { ids }]) => (ids.some((id) => newIds.has(id)) ? [path] : [])));
  return { took: taken.added, erased: taken.erased, segments, news, faults };
};

const problemOf = (problem: Fault['problem']) => (problem ? { problem } : {});

const takeIn = async (desk: Desk, fresh: readonly Entry[], collection: string) => {
  if (fresh.length === 0) return { added: 0, erased: 0, copied: false };
  const deed = { id: desk.newId(), name: stepDeed(fresh.length), at: desk.now() };
  const options = { collection, shared: true as const };
  const { added, erased, copiedTablet } = await inTurn(desk.store, () => desk.store.takeIn(fresh, deed, options));
  return { added, erased, copied: copiedTablet };
};

/** The collection to keep in step. One the device does not have is taken on only where nothing was entered here yet. */
const collectionOf = async (desk: Desk, got: readonly Got[], first: boolean): Promise<string> => {
  const said = got.flatMap(({ entries }) => entries.filter(({ kind }) => kind === 'collection'));
  if (said.some(({ body }) => body.invented === true)) refuse(stepRefusal('step: invented', {}));
  const [theirs, ...more] = new Set(got.map(({ collection }) => collection));
  if (!first || theirs === undefined) return desk.collection;
  if (more.length > 0) refuse(stepRefusal('step: several collections', {}));
  if (theirs === desk.collection || (await desk.store.held()).entries === 0) return theirs;
  const here = (await desk.store.current(desk.collection))?.lead.body.name;
  const named = said.filter(({ thing }) => thing === theirs).at(-1)?.body.name;
  return refuse(stepRefusal('step: other collection', { here: String(here ?? ''), theirs: String(named ?? '') }));
};
