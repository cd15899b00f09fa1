import { sha256 } from '../../device/hash';
import type { Entry } from '../../engine/record';
import type { Segment } from './joined';

/** What is remembered of a file of the folder. */
export const segmentOf = async (bytes: Uint8Array<ArrayBuffer>, entries: readonly Entry[]): Promise<Segment> => {
  const last = entries.reduce<Entry | undefined>((a, b) => (a && a.id > b.id ? a : b), undefined);
  const erasable = entries.filter(({ kind }) => kind === 'name' || kind === 'photo').map(({ thing }) => thing);
  return {
    sha256: await hashOf(bytes),
    ids: entries.map(({ id }) => id),
    erasable: [...new Set(erasable)],
    at: last?.at ?? '',
    by: last?.by ?? '',
  };
};

export const hashOf = (bytes: Uint8Array<ArrayBuffer>): Promise<string> => sha256(bufferOf(bytes));

/** The bytes alone, where they are part of more. */
export const bufferOf = (bytes: Uint8Array<ArrayBuffer>): ArrayBuffer =>
  bytes.byteLength === bytes.buffer.byteLength ? bytes.buffer : bytes.slice().buffer;
