import type { Entry } from '../record';
import { type NoSurvey, readEntries } from './readSurvey';
import { writeEntries } from './writeSurvey';

/** Format of one file in a folder several devices keep in step with: no survey by itself, since it may build on entries in another. */
const format = 'patina-round-step';

/** Some entries as the bytes of such a file; equal entries are equal bytes, as with a survey. */
export const writeSegment = (collection: string, entries: readonly Entry[]): Uint8Array<ArrayBuffer> =>
  writeEntries(format, collection, entries);

/**
 * Reads such a file from anywhere, judged as a survey is, but for what its entries replace: that may lie elsewhere and is for
 * `fitTogether` to ask. Never throws, whatever the bytes.
 */
export const readSegment = (
  bytes: Uint8Array,
): { readonly ok: true; readonly collection: string; readonly entries: readonly Entry[] } | NoSurvey => {
  const read = readEntries(bytes, format);
  return read.ok ? { ok: true, collection: read.file.collection, entries: read.file.entries } : read;
};
