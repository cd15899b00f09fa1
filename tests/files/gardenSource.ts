import { existsSync, readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import { readSurvey } from '../../src/engine/exchange';
import type { PaperSource } from '../../src/engine/reckoning';
import type { Entry } from '../../src/engine/record';
import { sourceInBag } from '../../src/papers/sourceInBag';
import '../../src/words/pastStart';

/** The day on which papers of the garden are made. */
export const gardenDay = '2026-10-15';

const file = 'public/demo/demo.survey.bin';

interface Survey {
  readonly collection: string;
  readonly entries: readonly Entry[];
}

/** The invented garden as the build plants it (npm run demo). */
export const gardenSurvey = (): Survey => {
  if (!existsSync(file)) throw new Error(`${file} is not there: npm run demo makes it.`);
  const read = readSurvey(gunzipSync(readFileSync(file)));
  if (!read.ok) throw new Error(`${file} cannot be read.`);
  return read;
};

/** What papers read of a survey of these entries. */
export const sourceOf = ({ collection, entries }: Survey, today = gardenDay): PaperSource =>
  sourceInBag({ collection, entries, made: today, photos: [], missing: [], leftOut: [] });
