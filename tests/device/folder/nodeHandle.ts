import { mkdir, open, readdir, readFile, rename, rm, stat } from 'node:fs/promises';
import { basename, join } from 'node:path';
import type { FileHandle, FolderHandle } from '../../../src/device/folder';

const fault = (name: string) => new DOMException(name, name);
const kindAt = async (path: string): Promise<'file' | 'directory' | undefined> => {
  try {
    return (await stat(path)).isDirectory() ? 'directory' : 'file';
  } catch {
    return undefined;
  }
};
const there = async (path: string, kind: 'file' | 'directory', create: boolean | undefined) => {
  const found = await kindAt(path);
  if (found && found !== kind) throw fault('TypeMismatchError');
  if (!found && !create) throw fault('NotFoundError');
  return found !== undefined;
};

/** A folder of this machine behind the shape a browser gives one in, with its names of faults. */
export const nodeHandle = (path: string): FolderHandle => ({
  kind: 'directory',
  name: basename(path),
  async *values() {
    for (const each of await readdir(path, { withFileTypes: true }))
      yield each.isDirectory() ? nodeHandle(join(path, each.name)) : fileHandle(join(path, each.name));
  },
  async getDirectoryHandle(name, options) {
    if (!(await there(join(path, name), 'directory', options?.create)))
      await mkdir(join(path, name), { recursive: true });
    return nodeHandle(join(path, name));
  },
  async getFileHandle(name, options) {
    if (!(await there(join(path, name), 'file', options?.create))) await (await open(join(path, name), 'a')).close();
    return fileHandle(join(path, name));
  },
  async removeEntry(name) {
    if (!(await kindAt(join(path, name)))) throw fault('NotFoundError');
    await rm(join(path, name));
  },
});

let swaps = 0;
const fileHandle = (path: string): FileHandle => ({
  kind: 'file',
  name: basename(path),
  getFile: async () => new Blob([await readFile(path)]),
  async createWritable() {
    const swap = join(path, '..', `.swap-${++swaps}`);
    const file = await open(swap, 'w');
    return {
      write: async (bytes) => void (await file.write(bytes as Uint8Array)),
      close: async () => {
        await file.close();
        await rename(swap, path);
      },
      abort: async () => {
        await file.close();
        await rm(swap);
      },
    };
  },
});
