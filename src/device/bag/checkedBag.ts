import {
  type BagInfo,
  type BagText,
  bagLimits,
  bagPaths,
  bagReason,
  photoAt,
  readDeclaration,
  readInfo,
  readManifest,
  sortedNames,
} from '../../engine/bag';
import type { Reason } from '../../engine/record';
import { sha256 } from '../hash';
import { StoreProblem } from '../storeProblem';
import type { BagStep } from './asked';
import { goOn } from './leftOff';
import { unpackedFile } from './unpackedFile';
import { type ZipFile, zipDirectory } from './zipDirectory';

/** A photo in a bag, its bytes found to be those its name was made from. */
export interface PhotoInBag {
  readonly sha256: string;
  readonly mime: string;
  readonly file: ZipFile;
}

/** A bag complete and valid by RFC 8493 (section 3): every file listed is there, none other is, and every hash is right. */
export interface BagWhole {
  readonly ok: true;
  /** What bag-info.txt says; nothing where there is none. */
  readonly info: Partial<BagInfo>;
  readonly survey: ZipFile;
  readonly photos: readonly PhotoInBag[];
  /** Files an operating system left in it, passed over unread. */
  readonly litter: readonly string[];
}

export interface BagFaulty {
  readonly ok: false;
  readonly reasons: readonly Reason[];
}

export interface CheckWay {
  heard?(step: BagStep): void;
  readonly signal?: AbortSignal | undefined;
}

/** Thrown within this file only: what is wrong with the bag. */
class Faulty extends Error {
  readonly reasons: readonly Reason[];
  constructor(...reasons: readonly Reason[]) {
    super(reasons[0]?.code);
    this.reasons = reasons;
  }
}

const said = <T>(text: BagText<T>): T => {
  if (text.ok) return text.value;
  throw new Faulty(text.reason);
};

type Files = ReadonlyMap<string, ZipFile>;

/** Reads a bag through and judges every byte of it. One file of it is in memory at a time. Throws LeftOff once `signal` is aborted. */
export const checkedBag = async (bag: Blob, way: CheckWay = {}): Promise<BagWhole | BagFaulty> => {
  try {
    return await whole(bag, way);
  } catch (error) {
    if (error instanceof Faulty) return { ok: false, reasons: fewest(error.reasons) };
    if (error instanceof StoreProblem) return { ok: false, reasons: [error.reason] };
    throw error;
  }
};

const fewest = (reasons: readonly Reason[]): readonly Reason[] => {
  const more = reasons.length - bagLimits.faults;
  return more > 0 ? [...reasons.slice(0, bagLimits.faults), bagReason('bag: more faults', { count: more })] : reasons;
};

const whole = async (bag: Blob, { heard, signal }: CheckWay): Promise<BagWhole> => {
  const on = () => {
    if (signal) goOn(signal);
  };
  const entries = said(await zipDirectory(bag, on));
  const { files, litter } = said(sortedNames(entries));
  const texts = await tagFiles(bag, files);
  said(readDeclaration(texts.get(bagPaths.declaration) ?? new Uint8Array()));
  const manifestBytes = texts.get(bagPaths.manifest);
  if (!manifestBytes) throw new Faulty(bagReason('bag: no manifest', {}));
  const manifest = said(readManifest(bagPaths.manifest, manifestBytes));
  const tags = texts.get(bagPaths.tagManifest);
  const tagManifest = tags ? said(readManifest(bagPaths.tagManifest, tags)) : new Map<string, string>();
  const infoBytes = texts.get(bagPaths.info);
  // Hashes of the texts first: a damaged text is then called damaged, whatever it happens to say.
  const damaged = await alteredTags(texts, tagManifest);
  if (damaged.length > 0) throw new Faulty(...damaged);
  const info = infoBytes ? said(readInfo(infoBytes)) : {};
  const payload = new Map([...files].filter(([path]) => path.startsWith('data/')));
  const incomplete = [...counted(info, payload), ...complete(manifest, payload), ...wrongPhotoNames(manifest)];
  if (incomplete.length > 0) throw new Faulty(...incomplete);
  const survey = payload.get(bagPaths.survey);
  if (!survey) throw new Faulty(bagReason('bag: no survey', {}));
  const altered: Reason[] = [];
  const all = [...payload.values()].reduce((sum, { bytes }) => sum + bytes, 0);
  let done = 0;
  // In the order they lie in, so that a slow disk reads on.
  for (const [path, file] of [...payload].sort(([, a], [, b]) => a.start - b.start)) {
    on();
    const bytes = await unpackedFile(bag, file);
    if ((await sha256(bytes)) !== manifest.get(path)) altered.push(bagReason('bag: file altered', { path }));
    done += file.bytes;
    heard?.({ stage: 'reading', done, all });
  }
  if (altered.length > 0) throw new Faulty(...altered);
  const photos = [...payload].flatMap(([path, file]) => {
    const photo = photoAt(path);
    return photo ? [{ ...photo, file }] : [];
  });
  return { ok: true, info, survey, photos, litter };
};

/** The files that say what the bag is. They are small; one that is not is no such file. */
const tagFiles = async (bag: Blob, files: Files): Promise<ReadonlyMap<string, Uint8Array<ArrayBuffer>>> => {
  const texts = new Map<string, Uint8Array<ArrayBuffer>>();
  for (const [path, file] of files) if (!path.startsWith('data/')) texts.set(path, await unpackedFile(bag, file));
  return texts;
};

const alteredTags = async (
  texts: ReadonlyMap<string, Uint8Array<ArrayBuffer>>,
  listed: ReadonlyMap<string, string>,
): Promise<Reason[]> => {
  const faults: Reason[] = [];
  for (const [path, hash] of listed) {
    const bytes = texts.get(path);
    if (!bytes) faults.push(bagReason('bag: file missing', { file: bagPaths.tagManifest, path }));
    else if ((await sha256(bytes)) !== hash) faults.push(bagReason('bag: file altered', { path }));
  }
  return faults;
};

/** Every file listed is there, and every file there is listed (RFC 8493, section 3). */
const complete = (manifest: ReadonlyMap<string, string>, payload: Files): Reason[] => [
  ...[...manifest.keys()]
    .filter((path) => !payload.has(path))
    .map((path) => bagReason('bag: file missing', { file: bagPaths.manifest, path })),
  ...[...payload.keys()]
    .filter((path) => !manifest.has(path))
    .map((path) => bagReason('bag: file not listed', { path })),
];

const wrongPhotoNames = (manifest: ReadonlyMap<string, string>): Reason[] =>
  [...manifest].flatMap(([path, hash]) => {
    const photo = photoAt(path);
    return photo && photo.sha256 !== hash ? [bagReason('bag: photo name', { path })] : [];
  });

/** The quick count of all bytes and files, where the bag tells it. Said only where the list of files has nothing more to say. */
const counted = ({ payload: told }: Partial<BagInfo>, payload: Files): Reason[] => {
  if (!told) return [];
  const bytes = [...payload.values()].reduce((sum, file) => sum + file.bytes, 0);
  return bytes === told.bytes && payload.size === told.files ? [] : [bagReason('bag: count differs', told)];
};
