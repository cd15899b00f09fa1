import type { Folder, Listed } from '../../device/folder';

/** What lies in the folder. */
export interface InFolder {
  /** Paths of the files of entries, `<writer>/<n>.json`, in order. */
  readonly segments: readonly string[];
  /** Photos by the hash in their name. */
  readonly photos: ReadonlyMap<string, Listed>;
}

export const photosFolder = 'photos';

const numbered = /^([1-9]\d{0,8})\.json$/;
const named = /^([0-9a-f]{64})\.[a-z0-9]{1,5}$/;

/** The number of a writer's file, by its path. */
export const numberOf = (path: string): number => Number(path.slice(path.indexOf('/') + 1, -'.json'.length));
export const writerOf = (path: string): string => path.slice(0, path.indexOf('/'));

/** What else lies in the folder is none of ours, and stays. */
export const inFolder = async (folder: Folder, signal?: AbortSignal): Promise<InFolder> => {
  const segments: string[] = [];
  let photos: readonly Listed[] = [];
  for (const { name, isFolder } of [...(await folder.list('', signal))].sort(byName)) {
    if (!isFolder) continue;
    const within = await folder.list(name, signal);
    if (name === photosFolder) photos = within;
    else segments.push(...pathsOf(name, within));
  }
  return {
    segments,
    photos: new Map(photos.flatMap((file) => (named.test(file.name) ? [[file.name.slice(0, 64), file]] : []))),
  };
};

const byName = (a: Listed, b: Listed): number => (a.name < b.name ? -1 : 1);

const pathsOf = (writer: string, files: readonly Listed[]): string[] =>
  files
    .filter(({ name, isFolder }) => !isFolder && numbered.test(name))
    .map(({ name }) => `${writer}/${name}`)
    .sort((a, b) => numberOf(a) - numberOf(b));
