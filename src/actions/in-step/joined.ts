import type { Reason } from '../../engine/record';
import type { Desk } from '../desk';
import { inTurn } from '../inTurn';
import { rememberedAnew } from '../keeping';

/** Something in the folder that was left as it is, and what was wrong with it. */
export interface Fault {
  readonly fault: Reason;
  readonly problem?: Reason;
}

/** What one step came to. Entries and photos are counted one by one. */
export interface Stepped {
  /** ISO 8601 with offset. */
  readonly at: string;
  readonly took: number;
  readonly gave: number;
  readonly photosIn: number;
  readonly photosOut: number;
  /** Entries here that were erased elsewhere, and went. */
  readonly erased: number;
  readonly faults: readonly Fault[];
}

/** One device that writes to the folder. */
export interface Writer {
  readonly writer: string;
  /** Thing name of the surveyor of its last entry, or ''. */
  readonly by: string;
  /** When that entry was made, by that device's clock. */
  readonly at: string;
  readonly entries: number;
}

/** How this device keeps in step. A setting of the device, beside the record. */
export interface Joined {
  readonly way: 'server' | 'picked';
  /** The folder as a person knows it. */
  readonly name: string;
  /** The name this device gives the server. */
  readonly account?: string;
  /** Names this device's own files in the folder, and the device it stands for. */
  readonly writer: string;
  readonly device: string;
  readonly since: string;
  readonly last?: Stepped;
  /** Why the last try came to no end. */
  readonly stopped?: { readonly at: string; readonly reason: Reason };
  /** What lay here when the last step ended. */
  readonly held?: Held;
  readonly who: readonly Writer[];
}

interface Held {
  readonly entries: number;
  readonly photos: number;
}

/** One file of the folder that was read or written here. */
export interface Segment {
  /** SHA-256 of its bytes. */
  readonly sha256: string;
  readonly ids: readonly string[];
  /** Things in it that can be erased by name: names of persons, photos. */
  readonly erasable: readonly string[];
  readonly at: string;
  readonly by: string;
  /** It was read out of the folder; one that was written only is read once more. */
  readonly seen?: true;
}

const key = 'in step';
const segmentStart = 'in step/';

export const joinedTo = (desk: Desk): Promise<Joined | undefined> => desk.store.meta<Joined | undefined>(key);

export const setJoined = async (desk: Desk, joined: Joined | undefined): Promise<void> => {
  await inTurn(desk.store, () => desk.store.setMeta(key, joined));
  rememberedAnew(desk);
};

/** Every file of the folder known here, by path. */
export const segmentsKnown = async (desk: Desk): Promise<Map<string, Segment>> =>
  new Map(
    (await desk.store.metas<Segment | undefined>(segmentStart)).flatMap(([path, row]) => (row ? [[path, row]] : [])),
  );

/** `undefined` forgets it. */
export const setSegment = (desk: Desk, path: string, segment: Segment | undefined): Promise<void> =>
  desk.store.setMeta(segmentStart + path, segment);

export const forgetSegments = async (desk: Desk): Promise<void> => {
  for (const path of (await segmentsKnown(desk)).keys()) await setSegment(desk, path, undefined);
};
