import { createHash } from 'node:crypto';
import { bagPaths, declaration, writeInfo, writeManifest } from '../../src/engine/bag';
import { writeSurvey } from '../../src/engine/exchange';
import type { Entry } from '../../src/engine/record';
import { smallSurvey } from './smallSurvey';
import { utf8, type Zipped, zipOf } from './zipped';

export const hashOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

/** Bytes that begin as a JPEG does. */
export const picture = (n: number, length = 60): Uint8Array<ArrayBuffer> =>
  Uint8Array.from({ length }, (_, i) => [0xff, 0xd8, 0xff, 0xe0][i] ?? (i * 7 + n * 31) & 0xff);

export type Contents = Map<string, Uint8Array>;

/** The payload of a bag: a survey, photos by their hash, and what is read without this app. */
export const payloadOf = (
  collection: string,
  entries: readonly Entry[],
  photos: readonly Uint8Array[] = [],
): Contents =>
  new Map([
    [bagPaths.survey, writeSurvey(collection, entries)],
    ...photos.map((bytes): [string, Uint8Array] => [`${bagPaths.photos}${hashOf(bytes)}.jpg`, bytes]),
    [bagPaths.readme, utf8('A survey.\r\n')],
  ]);

/** The same with the texts that make it a bag, the tag files last so that a test can put others in their place. */
export const bagged = (payload: Contents, over: Readonly<Record<string, string | undefined>> = {}): Contents => {
  const listed = (files: Iterable<[string, Uint8Array]>) =>
    [...files].map(([path, bytes]) => ({ path, sha256: hashOf(bytes) }));
  const bytes = [...payload.values()].reduce((sum, file) => sum + file.length, 0);
  const photos = [...payload.keys()].filter((path) => path.startsWith(bagPaths.photos)).length;
  const texts: Record<string, string | undefined> = {
    [bagPaths.declaration]: declaration,
    [bagPaths.info]: writeInfo({
      collection: 'collection/x',
      store: 'store',
      day: '2026-10-15',
      entries: 1,
      photos,
      missing: [],
      leftOut: [],
      payload: { bytes, files: payload.size },
    }),
    [bagPaths.manifest]: writeManifest(listed(payload)),
    ...over,
  };
  const tags = Object.entries(texts).flatMap(([path, text]): [string, Uint8Array][] =>
    text === undefined ? [] : [[path, utf8(text)]],
  );
  const tagManifest =
    over[bagPaths.tagManifest] ?? writeManifest(listed(tags.filter(([path]) => !path.startsWith('tag'))));
  const all: Contents = new Map([...tags.filter(([path]) => path !== bagPaths.tagManifest), ...payload]);
  if (!Object.hasOwn(over, bagPaths.tagManifest) || over[bagPaths.tagManifest] !== undefined)
    all.set(bagPaths.tagManifest, utf8(tagManifest));
  return all;
};

export const asZipped = (contents: Contents, base = '', more: Omit<Zipped, 'name' | 'bytes'> = {}): Zipped[] =>
  [...contents].map(([path, bytes]) => ({ name: base + path, bytes, ...more }));

/** A small sound bag, as bytes of a zip. */
export const smallBag = (): Uint8Array<ArrayBuffer> => {
  const { collection, entries } = smallSurvey();
  return zipOf(asZipped(bagged(payloadOf(collection, entries.slice(0, 2), [picture(1)])), 'bag/'));
};

export const asFile = (bytes: Uint8Array<ArrayBuffer>, name = 'visit.survey.zip'): File => new File([bytes], name);
