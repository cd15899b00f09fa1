import { bites } from '../../src/device/bag/inWorker';
import { nameOf } from '../../src/engine/record';
import { bagPapers } from './bagPapers';
import { hashOf } from './bags';
import { first } from './entries';
import { smallSurvey } from './smallSurvey';

/** The bites of the zip this app writes of a small survey with these pictures: as the app writes them, without a store. */
export const writtenBag = async (pictures: readonly Uint8Array<ArrayBuffer>[]): Promise<Uint8Array<ArrayBuffer>[]> => {
  const { collection, entries } = smallSurvey();
  const work = entries.find(({ kind }) => kind === 'sculpture')?.thing ?? '';
  const byHash = new Map(pictures.map((bytes) => [hashOf(bytes), bytes]));
  const said = [...byHash].map(([sha256, bytes], n) => {
    const body = { sculpture: work, sha256, mime: 'image/jpeg', bytes: bytes.length, role: 'other' as const };
    return first(900_000 + n, nameOf.photo(sha256), 'photo', body, { within: work });
  });
  const source = {
    photo: async (sha256: string) => {
      const bytes = byHash.get(sha256);
      return bytes && { sha256, mime: 'image/jpeg', bytes: bytes.buffer };
    },
  };
  const asked = { name: 'bag.survey.zip', collection, storeId: 'a store', day: '2026-10-15', without: [] };
  const written: Uint8Array<ArrayBuffer>[] = [];
  const gone = { here: [], missing: [], damaged: [] };
  for await (const bite of bites(source, asked, [...entries, ...said], bagPapers, gone)) written.push(bite);
  return written;
};
