import { expect, test } from 'vitest';
import type { Folder } from '../../../src/device/folder';

const bytes = (text: string): Uint8Array<ArrayBuffer> => new Uint8Array(new TextEncoder().encode(text));
const text = (given: Uint8Array | undefined) => given && new TextDecoder().decode(given);
const namesIn = async (folder: Folder, path: string) => (await folder.list(path)).map(({ name }) => name).sort();

/** What every folder holds to, whatever carries it. `made` gives a folder that is empty; each test asks for one. */
export function folderContract(made: () => Promise<Folder> | Folder): void {
  test('an empty folder holds nothing, a folder that is not there neither, and a file that is not there is undefined', async () => {
    const folder = await made();
    expect(await folder.list('')).toEqual([]);
    expect(await folder.list('tablet')).toEqual([]);
    expect(await folder.get('tablet/1.json')).toBeUndefined();
    expect(await folder.get('1.json')).toBeUndefined();
  });

  test('what was put is listed with its size where it lies, and comes back byte for byte', async () => {
    const folder = await made();
    const every = Uint8Array.from({ length: 70_000 }, (_, at) => at % 256);
    expect(await folder.put('photos/every.jpg', every)).toBe('put');
    expect(await folder.put('photos/none.jpg', new Uint8Array())).toBe('put');
    expect(await folder.put('survey.json', bytes('{"words":"Grünspan — 雕"}'))).toBe('put');
    expect(await folder.list('')).toHaveLength(2);
    expect(await folder.list('')).toContainEqual({ name: 'photos', isFolder: true });
    expect(await folder.list('')).toContainEqual({ name: 'survey.json', isFolder: false, bytes: 29 });
    expect(await folder.list('photos')).toContainEqual({ name: 'every.jpg', isFolder: false, bytes: 70_000 });
    expect(await folder.list('photos')).toContainEqual({ name: 'none.jpg', isFolder: false, bytes: 0 });
    expect(Buffer.compare(Buffer.from((await folder.get('photos/every.jpg'))!), Buffer.from(every))).toBe(0);
    expect(await folder.get('photos/none.jpg')).toHaveLength(0);
    expect(text(await folder.get('survey.json'))).toBe('{"words":"Grünspan — 雕"}');
  });

  test('a file that is there is never written over, with other bytes or the same', async () => {
    const folder = await made();
    await folder.put('tablet/1.json', bytes('first'));
    expect(await folder.put('tablet/1.json', bytes('second'))).toBe('there already');
    expect(await folder.put('tablet/1.json', bytes('first'))).toBe('there already');
    expect(text(await folder.get('tablet/1.json'))).toBe('first');
    expect(await namesIn(folder, 'tablet')).toEqual(['1.json']);
  });

  test('folders whose names begin alike are kept apart, and folders in folders are listed step by step', async () => {
    const folder = await made();
    for (const path of ['a/1.json', 'ab/2.json', 'a/b/3.json']) await folder.put(path, bytes(path));
    expect(await namesIn(folder, '')).toEqual(['a', 'ab']);
    expect(await namesIn(folder, 'a')).toEqual(['1.json', 'b']);
    expect(await namesIn(folder, 'ab')).toEqual(['2.json']);
    expect(await folder.list('a/b')).toEqual([{ name: '3.json', isFolder: false, bytes: 10 }]);
    expect(text(await folder.get('a/b/3.json'))).toBe('a/b/3.json');
  });

  test('what was taken away is not there, may be taken away again, and its name may be used anew', async () => {
    const folder = await made();
    await folder.put('photos/1.jpg', bytes('first'));
    await folder.put('photos/2.jpg', bytes('other'));
    await folder.remove('photos/1.jpg');
    await folder.remove('photos/1.jpg');
    await folder.remove('nowhere/1.jpg');
    expect(await folder.get('photos/1.jpg')).toBeUndefined();
    expect(await namesIn(folder, 'photos')).toEqual(['2.jpg']);
    expect(await folder.put('photos/1.jpg', bytes('second'))).toBe('put');
    expect(text(await folder.get('photos/1.jpg'))).toBe('second');
  });

  test('bytes given and bytes got are one’s own: what is done to them later changes nothing in the folder', async () => {
    const folder = await made();
    const given = bytes('kept');
    await folder.put('1.json', given);
    given.fill(0);
    const got = await folder.get('1.json');
    got!.fill(1);
    expect(text(await folder.get('1.json'))).toBe('kept');
  });

  test('many that write at once into a folder not yet there all find what they wrote', async () => {
    const folder = await made();
    const names = Array.from({ length: 12 }, (_, at) => `${at}.json`);
    expect(await Promise.all(names.map((name) => folder.put(`tablet/${name}`, bytes(name))))).toEqual(
      names.map(() => 'put'),
    );
    expect(await namesIn(folder, 'tablet')).toEqual([...names].sort());
    for (const name of names) expect(text(await folder.get(`tablet/${name}`))).toBe(name);
  });

  test('of several that write one name at once, what is kept is whole and from one that was told so', async () => {
    const folder = await made();
    const texts = ['a', 'b', 'c', 'd'].map((one) => one.repeat(40_000));
    const told = await Promise.all(texts.map((one) => folder.put('tablet/1.json', bytes(one))));
    const kept = text(await folder.get('tablet/1.json'));
    expect(texts.filter((_, at) => told[at] === 'put')).toContain(kept);
    expect(await namesIn(folder, 'tablet')).toEqual(['1.json']);
  });

  test('three hundred files in one folder are all listed', async () => {
    const folder = await made();
    const names = Array.from({ length: 300 }, (_, at) => `${at}.json`);
    for (let at = 0; at < names.length; at += 20)
      await Promise.all(names.slice(at, at + 20).map((name) => folder.put(`tablet/${name}`, bytes('x'))));
    expect(await namesIn(folder, 'tablet')).toEqual([...names].sort());
  });

  test.each([
    '../1.json',
    'a/../../1.json',
    '/1.json',
    'a//1.json',
    './1.json',
    'a b.json',
    '.hidden',
    'a/.hidden',
    'a\\1.json',
    'https://example.org/1.json',
    'ü.json',
    'a?1.json',
    'a%2f1.json',
  ])('the path “%s” is none of this app’s, and nothing is written, read or taken away by it', async (path) => {
    const folder = await made();
    await folder.put('1.json', bytes('kept'));
    await expect(folder.put(path, bytes('x'))).rejects.toThrow('Not a path');
    await expect(folder.get(path)).rejects.toThrow('Not a path');
    await expect(folder.list(path)).rejects.toThrow('Not a path');
    await expect(folder.remove(path)).rejects.toThrow('Not a path');
    expect(await namesIn(folder, '')).toEqual(['1.json']);
  });

  test('what was called off before it began is not done, and ends with the reason it was called off for', async () => {
    const folder = await made();
    await folder.put('1.json', bytes('kept'));
    const off = AbortSignal.abort('no longer wanted');
    await expect(folder.list('', off)).rejects.toBe('no longer wanted');
    await expect(folder.get('1.json', off)).rejects.toBe('no longer wanted');
    await expect(folder.put('2.json', bytes('x'), off)).rejects.toBe('no longer wanted');
    await expect(folder.remove('1.json', off)).rejects.toBe('no longer wanted');
    expect(await namesIn(folder, '')).toEqual(['1.json']);
  });
}
