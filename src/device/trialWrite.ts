import { deviceBox } from './box';

/** What a trial came to: bytes that were kept, all of what was tried or up to the fault, and the fault in the browser's words. */
export interface Trial {
  readonly kept: number;
  readonly whole: boolean;
  readonly said?: string;
}

const name = 'patina-round-trial';
const rows = 'pieces';
/** Noted while a trial is under way, so that one that was cut off does not lie on the tablet for ever. */
const note = 'patina-round.trial';
/** Bytes of one piece: about a photo. */
const piece = 4_000_000;

const settled = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

/**
 * Writes so many bytes into a database of its own, apart from the record, and takes them away again. What a browser says of its free
 * space is an estimate, rounded on purpose; a write that went through is not.
 */
export const trialWrite = async (bytes: number, heard?: (kept: number) => void): Promise<Trial> => {
  let kept = 0;
  let database: IDBDatabase | undefined;
  try {
    deviceBox.write(note, true);
    await taken();
    const opening = indexedDB.open(name, 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore(rows, { autoIncrement: true });
    database = await settled(opening);
    const noise = noiseOf(piece);
    while (kept < bytes) {
      await written(database, noise);
      kept += piece;
      heard?.(kept);
    }
    return { kept, whole: true };
  } catch (error) {
    const { name: kind = '', message = '' } = (error ?? {}) as Partial<DOMException>;
    return { kept, whole: false, said: [kind, message].filter(Boolean).join(': ') };
  } finally {
    database?.close();
    await sweepTrial().catch(() => undefined);
  }
};

/** Takes away what a trial left that was cut off, as by a tablet that went dark; nothing where none was. */
export const sweepTrial = async (): Promise<void> => {
  if (deviceBox.read(note) !== true) return;
  await taken();
  deviceBox.forget(note);
};

const taken = async (): Promise<void> => void (await settled(indexedDB.deleteDatabase(name)));

const written = (database: IDBDatabase, bytes: Uint8Array): Promise<void> =>
  new Promise((resolve, reject) => {
    const work = database.transaction(rows, 'readwrite', { durability: 'strict' });
    work.oncomplete = () => resolve();
    work.onabort = () => reject(work.error);
    work.objectStore(rows).add(bytes);
  });

/** No two stretches alike, so that nothing can be packed smaller than a photo can. */
const noiseOf = (length: number): Uint8Array => {
  const noise = new Uint8Array(length);
  const most = 65_536;
  for (let at = 0; at < length; at += most) crypto.getRandomValues(noise.subarray(at, Math.min(at + most, length)));
  return noise;
};
