import { bagLimits } from './bagLimits';
import { bagPaths } from './paths';
import { type BagText, refused, says } from './readText';
import { bagReason } from './reasonCodes';

const tagFiles: ReadonlySet<string> = new Set([
  bagPaths.declaration,
  bagPaths.info,
  bagPaths.manifest,
  bagPaths.tagManifest,
]);

/** Files of the payload: plain letters, and an ending that is on this list. No zip within the zip. */
const payload =
  /^data\/(?:[a-z0-9_-]+\/)*[A-Za-z0-9_-]+(?:\.schema)?\.(?:json|jsonld|csv|html|txt|jpg|png|webp|heic|avif|bin)$/;
/** Names that are devices, not files, on some systems. */
const device = /(?:^|\/)(?:con|prn|aux|nul|com\d|lpt\d)(?:\.|\/|$)/i;
/** What operating systems leave in folders, and so in what was packed again. */
const litter = /(?:^|\/)(?:__MACOSX\/.*|\.DS_Store|\._[^/]*|Thumbs\.db|desktop\.ini)$/;
/** A folder around a bag: a plain name. */
const wrapping = /^[^\\/:*?"<>|\p{Cc}\p{Cf}\p{Co}\p{Cn}]{1,100}$/u;

/** Files of a bag by their paths in it, and what was left in it by others. */
export interface Sorted<T> {
  readonly files: ReadonlyMap<string, T>;
  readonly litter: readonly string[];
}

const isLitter = (name: string): boolean => litter.test(name);

/** The folders around a bag: what stands before the shortest path of a bagit.txt. */
const baseOf = (names: readonly string[]): BagText<string> => {
  const declared = names.filter((name) => name === bagPaths.declaration || name.endsWith(`/${bagPaths.declaration}`));
  const [shortest] = declared.sort((a, b) => a.length - b.length);
  if (shortest === undefined) {
    const almost = names.some((name) => /(?:^|\/)manifest-[a-z0-9]+\.txt$/.test(name));
    return refused(almost ? bagReason('bag: no declaration', {}) : bagReason('bag: not a bag', {}));
  }
  const base = shortest.slice(0, -bagPaths.declaration.length);
  const around = base.split('/').slice(0, -1);
  const plain = around.every((part) => wrapping.test(part) && !/^\.+$|^~|[. ]$/.test(part));
  return plain && around.length <= bagLimits.wrappings
    ? says(base)
    : refused(bagReason('bag: name', { path: shortest }));
};

const judged = (path: string): BagText<string> => {
  if (/^(?:tag)?manifest-[a-z0-9]+\.txt$/.test(path) && !tagFiles.has(path))
    return refused(bagReason('bag: other manifest', { path }));
  if (path === 'fetch.txt') return refused(bagReason('bag: fetch', {}));
  const fits = tagFiles.has(path) || (payload.test(path) && path.length <= bagLimits.path && !device.test(path));
  return fits ? says(path) : refused(bagReason('bag: name', { path }));
};

/**
 * Sorts the files of a zip into a bag. Every name must be one a bag of ours can have, in one and the same folder, and none may be there
 * twice, small and capital letters and the ways of writing an accent taken for the same.
 */
export const sortedNames = <T extends { readonly name: string; readonly folder: boolean }>(
  entries: readonly T[],
): BagText<Sorted<T>> => {
  const seen = new Set<string>();
  for (const { name } of entries) {
    const plain = name.normalize('NFC').toLowerCase();
    if (seen.has(plain)) return refused(bagReason('bag: name twice', { path: name }));
    seen.add(plain);
  }
  const own = entries.filter(({ name }) => !isLitter(name));
  const base = baseOf(own.filter(({ folder }) => !folder).map(({ name }) => name));
  if (!base.ok) return base;
  const files = new Map<string, T>();
  for (const entry of own) {
    const inside = entry.name.startsWith(base.value);
    if (entry.folder) {
      const path = inside ? entry.name.slice(base.value.length) : '';
      const around = base.value.startsWith(entry.name);
      if (!around && !/^data\/(?:[a-z0-9_-]+\/)*$/.test(path))
        return refused(bagReason('bag: name', { path: entry.name }));
      continue;
    }
    if (!inside) return refused(bagReason('bag: name', { path: entry.name }));
    const path = judged(entry.name.slice(base.value.length));
    if (!path.ok) return path;
    files.set(path.value, entry);
  }
  return says({ files, litter: entries.filter(({ name }) => isLitter(name)).map(({ name }) => name) });
};
