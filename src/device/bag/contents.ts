import { bagPaths, type Listed, photoPath } from '../../engine/bag';
import { findingsCsv, type LeftOut, linkedArt, writeSurvey } from '../../engine/exchange';
import { assemble, type Entry } from '../../engine/record';
import { sha256 } from '../hash';
import type { Reader } from '../store';
import type { BagPapers } from './written';

/** A file on its way into a bag. */
export interface BagFile extends Listed {
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** What became of the photos, filled as they go. */
export interface PhotosGone {
  readonly here: { readonly sha256: string; readonly path: string; readonly bytes: number }[];
  readonly missing: string[];
  readonly damaged: string[];
}

/** Photos the entries speak of and nobody took away, by hash, each once, with the media type they were taken under. */
export const photosOf = (entries: readonly Entry[]): ReadonlyMap<string, { mime: string; bytes: number }> => {
  const photos = [...assemble(entries).values()].filter(({ kind, gone }) => kind === 'photo' && !gone);
  return new Map(
    photos
      .map(
        ({ lead: { body } }) => [String(body.sha256), { mime: String(body.mime), bytes: Number(body.bytes) }] as const,
      )
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  );
};

const named = async (path: string, bytes: Uint8Array<ArrayBuffer>): Promise<BagFile> => ({
  path,
  bytes,
  sha256: await sha256(bytes),
});

const text = (path: string, content: string): Promise<BagFile> => named(path, new TextEncoder().encode(content));

export interface PayloadAsked {
  readonly collection: string;
  readonly entries: readonly Entry[];
  readonly day: string;
  readonly leftOut: readonly LeftOut[];
  readonly states?: ReadonlyMap<string, string> | undefined;
}

/**
 * Everything under data/, one file at a time, so that no more than one photo is held. Photos whose bytes are not here, or are here and
 * not those their name was made from, are left out and noted in `gone`; the papers come after them and tell so.
 */
export async function* payload(
  reader: Pick<Reader, 'photo'>,
  { collection, entries, day, leftOut, states }: PayloadAsked,
  papers: BagPapers,
  gone: PhotosGone,
): AsyncGenerator<BagFile, void> {
  yield named(bagPaths.survey, writeSurvey(collection, entries));
  for (const [hash, { mime }] of photosOf(entries)) {
    const kept = await reader.photo(hash);
    const bytes = kept?.bytes instanceof ArrayBuffer ? new Uint8Array(kept.bytes) : undefined;
    const file = bytes && (await named(photoPath(hash, mime), bytes));
    if (file?.sha256 === hash) {
      gone.here.push({ sha256: hash, path: file.path, bytes: file.bytes.byteLength });
      yield file;
      continue;
    }
    gone.missing.push(hash);
    if (kept) gone.damaged.push(hash);
  }
  const contents = { collection, entries, made: day, photos: gone.here, missing: gone.missing, leftOut, states };
  const made = papers.papers(contents);
  yield text(bagPaths.readme, papers.readme(contents));
  yield text(bagPaths.report, papers.report(contents, made));
  for (const { path, html } of made) yield text(path, html);
  yield named(bagPaths.findings, findingsCsv(entries));
  yield text(bagPaths.linked, JSON.stringify(linkedArt(collection, entries), null, 1));
  yield text(bagPaths.schema, await papers.schema());
}
