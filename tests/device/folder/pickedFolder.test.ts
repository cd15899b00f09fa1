import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { canPickFolder, type FolderHandle, mayEnter, pickedFolder, pickFolder } from '../../../src/device/folder';
import { StoreProblem } from '../../../src/device/storeProblem';
import { folderContract } from './contract';
import { nodeHandle } from './nodeHandle';

const made: string[] = [];
const freshPath = async () => {
  const path = await mkdtemp(join(tmpdir(), 'in-step-'));
  made.push(path);
  return path;
};
afterEach(async () => {
  for (const path of made.splice(0)) await rm(path, { recursive: true, force: true });
});

describe('a folder that was picked', () => {
  folderContract(async () => pickedFolder(nodeHandle(await freshPath())));

  test('what other programs leave in it is passed over', async () => {
    const path = await freshPath();
    for (const name of ['.DS_Store', 'two words.txt', 'Übersicht.pdf']) await writeFile(join(path, name), 'x');
    expect(await pickedFolder(nodeHandle(path)).list('')).toEqual([]);
  });

  test('a photo that breaks off in the middle of writing leaves nothing under its name', async () => {
    const path = await freshPath();
    const folder = pickedFolder(full(nodeHandle(path)));
    await expect(folder.put('photos/1.jpg', new Uint8Array(10))).rejects.toThrow('folder: no room on the drive');
    expect(await pickedFolder(nodeHandle(path)).list('photos')).toEqual([]);
  });

  test('a stick pulled out is a sentence, and not taken for an empty folder', async () => {
    const path = await freshPath();
    const folder = pickedFolder(nodeHandle(path));
    await rm(path, { recursive: true });
    await expect(folder.list('')).rejects.toThrow(StoreProblem);
  });

  test('the page goes in where the browser asks nobody, and not where the person must be asked first', async () => {
    const handle = nodeHandle(await freshPath());
    expect(await mayEnter(handle)).toBe(true);
    const asking = {
      ...handle,
      queryPermission: async () => 'prompt' as const,
      requestPermission: async () => 'granted' as const,
    };
    expect(await mayEnter(asking)).toBe(false);
    expect(await mayEnter(asking, true)).toBe(true);
    const wary = { ...handle, queryPermission: () => Promise.reject(new DOMException('no tap', 'SecurityError')) };
    expect(await mayEnter(wary)).toBe(false);
  });

  test('a window for choosing that is closed is no fault, and one the browser does not open is a sentence', async () => {
    const picks = (name: string) =>
      vi.stubGlobal('showDirectoryPicker', () => Promise.reject(new DOMException(name, name)));
    expect(canPickFolder()).toBe(false);
    picks('AbortError');
    expect([canPickFolder(), await pickFolder()]).toEqual([true, undefined]);
    picks('SecurityError');
    await expect(pickFolder()).rejects.toThrow('folder: not let in');
    vi.unstubAllGlobals();
  });
});

/** A drive that takes names and no content. */
const full = (handle: FolderHandle): FolderHandle => ({
  ...handle,
  getDirectoryHandle: async (name, options) => full(await handle.getDirectoryHandle(name, options)),
  getFileHandle: async (name, options) => ({
    ...(await handle.getFileHandle(name, options)),
    createWritable: async () => ({
      write: () => Promise.reject(new DOMException('full', 'QuotaExceededError')),
      close: async () => undefined,
      abort: async () => undefined,
    }),
  }),
});
