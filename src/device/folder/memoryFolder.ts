import { type Folder, type Listed, plainPath } from './folder';

/** A folder that lives as long as this object. */
export function memoryFolder(): Folder {
  const files = new Map<string, Uint8Array<ArrayBuffer>>();
  return {
    async list(folder, signal) {
      signal?.throwIfAborted();
      const above = folder === '' ? '' : `${plainPath(folder)}/`;
      const found = new Map<string, Listed>();
      for (const [path, { length }] of files) {
        if (!path.startsWith(above)) continue;
        const [name = '', ...further] = path.slice(above.length).split('/');
        found.set(name, further.length > 0 ? { name, isFolder: true } : { name, isFolder: false, bytes: length });
      }
      return [...found.values()];
    },
    async get(path, signal) {
      signal?.throwIfAborted();
      return files.get(plainPath(path))?.slice();
    },
    async put(path, bytes, signal) {
      signal?.throwIfAborted();
      if (files.has(plainPath(path))) return 'there already';
      files.set(path, bytes.slice());
      return 'put';
    },
    async remove(path, signal) {
      signal?.throwIfAborted();
      files.delete(plainPath(path));
    },
  };
}
