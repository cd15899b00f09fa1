import { StoreProblem } from '../storeProblem';
import { type Folder, isPlainName, type Listed, plainPath } from './folder';
import type { FileHandle, FolderHandle } from './folderHandle';
import { folderReason } from './reasonCodes';

/** A folder a person picked: on a drive, a stick, or one that another program keeps the same on several devices. */
export function pickedFolder(root: FolderHandle): Folder {
  /** Writing looks first whether the name is free: one after the other, or two would both find it so. */
  let last: Promise<unknown> = Promise.resolve();
  const inTurn = <T>(work: () => Promise<T>): Promise<T> => {
    const mine = last.then(work, work);
    last = mine.catch(() => undefined);
    return mine;
  };
  const folderAt = async (steps: readonly string[], create: boolean): Promise<FolderHandle> => {
    let at = root;
    for (const step of steps) at = await at.getDirectoryHandle(step, { create });
    return at;
  };
  const fileAt = async (path: string): Promise<FileHandle | undefined> => {
    const steps = path.split('/');
    const name = steps.pop() as string;
    return there(async () => (await folderAt(steps, false)).getFileHandle(name));
  };

  return {
    async list(folder, signal) {
      const steps = folder === '' ? [] : plainPath(folder).split('/');
      signal?.throwIfAborted();
      return said(folder, async () => {
        const at = await there(() => folderAt(steps, false));
        if (!at && steps.length > 0) return [];
        const found: Listed[] = [];
        for await (const each of (at ?? root).values()) {
          if (!isPlainName(each.name)) continue;
          if (each.kind === 'directory') found.push({ name: each.name, isFolder: true });
          else found.push({ name: each.name, isFolder: false, bytes: (await each.getFile()).size });
        }
        return found;
      });
    },
    async get(path, signal) {
      plainPath(path);
      signal?.throwIfAborted();
      return said(path, async () => {
        const file = await (await fileAt(path))?.getFile();
        if (!file) return undefined;
        if (file.size > largest) throw new StoreProblem(folderReason('folder: file not ours', { path }));
        return new Uint8Array(await file.arrayBuffer());
      });
    },
    async put(path, bytes, signal) {
      plainPath(path);
      signal?.throwIfAborted();
      return inTurn(() =>
        said(path, async () => {
          if (await fileAt(path)) return 'there already';
          const steps = path.split('/');
          const name = steps.pop() as string;
          const folder = await folderAt(steps, true);
          const file = await folder.getFileHandle(name, { create: true });
          try {
            await written(file, bytes);
          } catch (error) {
            // The name was made before its content: an empty file must not stay under it.
            await folder.removeEntry(name).catch(() => undefined);
            throw error;
          }
          return 'put';
        }),
      );
    },
    async remove(path, signal) {
      const steps = plainPath(path).split('/');
      const name = steps.pop() as string;
      signal?.throwIfAborted();
      await said(path, () => there(async () => (await folderAt(steps, false)).removeEntry(name)));
    },
  };
}

/** The most one file may hold, in bytes: over that it is none of ours. */
const largest = 128 * 2 ** 20;

const written = async (file: FileHandle, bytes: Uint8Array<ArrayBuffer>): Promise<void> => {
  const stream = await file.createWritable();
  try {
    await stream.write(bytes);
  } catch (error) {
    await stream.abort().catch(() => undefined);
    throw error;
  }
  await stream.close();
};

const named = (error: unknown): string => (error instanceof Error || error instanceof DOMException ? error.name : '');

/** What is not there is `undefined`. A folder in the place of a file, or the other way round, is not what was asked for either. */
const there = async <T>(look: () => Promise<T>): Promise<T | undefined> => {
  try {
    return await look();
  } catch (error) {
    if (named(error) === 'NotFoundError' || named(error) === 'TypeMismatchError') return undefined;
    throw error;
  }
};

/** The browser's faults by their names (File System, WHATWG), as sentences. */
const said = async <T>(path: string, work: () => Promise<T>): Promise<T> => {
  try {
    return await work();
  } catch (error) {
    if (error instanceof StoreProblem) throw error;
    const name = named(error);
    if (name === 'QuotaExceededError') throw new StoreProblem(folderReason('folder: no room on the drive', {}), error);
    if (name === 'NotAllowedError' || name === 'SecurityError')
      throw new StoreProblem(folderReason('folder: not let in', {}), error);
    if (name === 'NoModificationAllowedError')
      throw new StoreProblem(folderReason('folder: not to be written', { path }), error);
    throw new StoreProblem(folderReason('folder: drive gone', { said: name || String(error) }), error);
  }
};
