import type { Target } from './target';

/** The folder in the app's own files where bags lie until they have left. */
const folderName = 'bags';

/** Held together by all pages that have a bag lying there; a page that gets it alone may sweep. */
const lockName = 'bags lying ready';

const root = (): Promise<FileSystemDirectoryHandle> | undefined => globalThis.navigator?.storage?.getDirectory?.();

/** A handle only workers have; TypeScript's DOM types for pages leave it out. */
interface SyncFile {
  write(bite: Uint8Array, options: { at: number }): number;
  truncate(size: number): void;
  flush(): void;
  close(): void;
}
type InWorker = FileSystemFileHandle & { createSyncAccessHandle?(): Promise<SyncFile> };

/** The app's own files, each bag in a folder named by its id; undefined where this browser has none. */
export const ownFileTarget = async (id: string, name: string): Promise<Target | undefined> => {
  try {
    const bags = await (await root())?.getDirectoryHandle(folderName, { create: true });
    const folder = await bags?.getDirectoryHandle(id, { create: true });
    const handle: InWorker | undefined = await folder?.getFileHandle(name, { create: true });
    const file = await handle?.createSyncAccessHandle?.();
    return handle && file ? written(handle, file, () => dropOwn(id)) : undefined;
  } catch (error) {
    // A private window may have the door and nothing behind it. A full device is said by the first bite.
    if (error instanceof DOMException) return undefined;
    throw error;
  }
};

const written = (handle: FileSystemFileHandle, file: SyncFile, remove: () => Promise<void>): Target => {
  let at = 0;
  let open = true;
  const close = () => {
    if (open) file.close();
    open = false;
  };
  file.truncate(0);
  return {
    write: async (bite) => {
      const written = file.write(bite, { at });
      // Some browsers write what fits, without a word.
      if (written !== bite.byteLength) throw new DOMException('short write', 'QuotaExceededError');
      at += written;
    },
    done: async () => {
      file.flush();
      close();
      return handle.getFile();
    },
    drop: async () => {
      close();
      await remove();
    },
  };
};

/** Removes one bag from the app's own files; what is not there is fine. */
export const dropOwn = async (id: string): Promise<void> => {
  try {
    const bags = await (await root())?.getDirectoryHandle(folderName);
    await bags?.removeEntry(id, { recursive: true });
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
  }
};

/** Holds bags that lie ready against the sweeping of other pages, until `release` is called or the page ends. */
export const holdReady = (): (() => void) => {
  let release = (): void => undefined;
  const until = new Promise<void>((go) => {
    release = go;
  });
  void globalThis.navigator?.locks?.request(lockName, { mode: 'shared' }, () => until);
  return release;
};

/** At the start: removes bags that a page left behind when it was ended. Not while another page has one lying ready. */
export const sweepReady = async (): Promise<void> => {
  const sweep = async () => {
    try {
      await (await root())?.removeEntry(folderName, { recursive: true });
    } catch (error) {
      if (!(error instanceof DOMException)) throw error;
    }
  };
  await globalThis.navigator?.locks?.request(lockName, { ifAvailable: true }, (lock) => (lock ? sweep() : undefined));
};
