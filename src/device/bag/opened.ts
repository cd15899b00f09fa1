import type { BagInfo } from '../../engine/bag';
import { bagReason } from '../../engine/bag';
import { type Preview, previewImport, readSurvey, type Survey } from '../../engine/exchange';
import type { Reason } from '../../engine/record';
import { pictureType } from '../photo';
import { openReader, type Reader } from '../store';
import type { BagAnswer, BagStep } from './asked';
import { checkedBag, type PhotoInBag } from './checkedBag';
import { goOn } from './leftOff';
import { unpackedFile } from './unpackedFile';

/** A file to be read: a survey, or a bag with one in it; its content says which. */
export interface OpenAsked {
  /** Name of the database it is held against. */
  readonly store: string;
  /** Thing name of the collection there. */
  readonly collection: string;
  readonly file: Blob;
}

export interface SurveyOpened {
  readonly ok: true;
  readonly survey: Pick<Survey, 'collection' | 'unknown' | 'notes'> & { readonly all: number };
  readonly preview: Preview;
  /** Of a bag only. */
  readonly bag?: {
    readonly info: Partial<BagInfo>;
    /** Photos that are spoken of and not here yet, with the type their first bytes tell. */
    readonly photos: readonly PhotoInBag[];
    readonly litter: readonly string[];
  };
}

export interface NotOpened {
  readonly ok: false;
  readonly problems: readonly Reason[];
}

type Source = Pick<Reader, 'allEntries' | 'photosHere'>;
interface Way {
  heard?(step: BagStep): void;
  readonly signal?: AbortSignal | undefined;
}

/** Entries handed to the page at once. */
const bite = 500;

/** Beside the page: reads the file, and the store through a connection of its own. The entries come before the rest, in bites. */
export const opening: BagAnswer<'open'> = async (asked, way) => {
  const reader = openReader(asked.store);
  try {
    const result = await opened(asked, reader, way);
    if (!result.ok || !way.part) return result;
    const { entries } = result.preview;
    for (let at = 0; at < entries.length; at += bite) way.part(entries.slice(at, at + bite));
    return { ...result, preview: { ...result.preview, entries: [] } };
  } finally {
    reader.close();
  }
};

const startsAsZip = async (file: Blob): Promise<boolean> => {
  const [p, k, third = 0] = new Uint8Array(await file.slice(0, 4).arrayBuffer());
  return p === 0x50 && k === 0x4b && [3, 5, 6, 7].includes(third);
};

/** Everything that is asked of a file before it may be carried in. Nothing is stored. Throws LeftOff once `signal` is aborted. */
export const opened = async (
  { collection, file }: OpenAsked,
  source: Source,
  way: Way = {},
): Promise<SurveyOpened | NotOpened> => {
  const bag = (await startsAsZip(file)) ? await checkedBag(file, way) : undefined;
  if (bag?.ok === false) return { ok: false, problems: bag.reasons };
  if (way.signal) goOn(way.signal);
  const survey = readSurvey(bag ? await unpackedFile(file, bag.survey) : new Uint8Array(await file.arrayBuffer()));
  if (!survey.ok) return survey;
  if (way.signal) goOn(way.signal);
  const entries = await source.allEntries();
  // A store nobody has entered anything in takes the file's collection for its own.
  const here = { collection: entries.length === 0 ? survey.collection : collection, entries };
  const inBag = bag?.photos ?? [];
  const preview = previewImport(
    here,
    survey,
    await source.photosHere(),
    inBag.map(({ sha256 }) => sha256),
  );
  if (!preview.ok) return preview;
  const { collection: theirs, unknown, notes } = survey;
  const said = { collection: theirs, unknown, notes, all: survey.entries.length };
  if (!bag) return { ok: true, survey: said, preview };
  const coming = new Set(preview.photosComing);
  const photos: PhotoInBag[] = [];
  const none: Reason[] = [];
  for (const photo of inBag.filter(({ sha256 }) => coming.has(sha256))) {
    const mime = pictureType(await firstBytes(file, photo));
    if (mime) photos.push({ ...photo, mime });
    else none.push(bagReason('bag: no picture', { path: photo.file.name }));
  }
  if (none.length > 0) return { ok: false, problems: none };
  return { ok: true, survey: said, preview, bag: { info: bag.info, photos, litter: bag.litter } };
};

/** As many as tell what sort of picture it is. */
const firstBytes = async (bag: Blob, { file }: PhotoInBag): Promise<Uint8Array> =>
  file.deflated
    ? unpackedFile(bag, file)
    : new Uint8Array(await bag.slice(file.start, file.start + Math.min(file.bytes, 512)).arrayBuffer());
