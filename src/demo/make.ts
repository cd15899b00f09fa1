/**
 * Makes the invented collection at build time, by the deeds a user has, with its clock pinned:
 * public/demo/demo.survey.bin (the survey, gzipped: no host is asked to do it), its texts in German, the drawn pictures, and their list. Equal sources give equal bytes.
 */
import 'fake-indexeddb/auto';
import { createHash } from 'node:crypto';
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import sharp from 'sharp';
import type { Desk } from '../actions';
import { memoryBox } from '../device/box';
import { openStore } from '../device/store';
import { writeSurvey } from '../engine/exchange';
import { nameOf } from '../engine/record';
import { writePng } from './drawing/png';
import { gardenClock } from './gardenClock';
import { inGerman } from './inGerman';
import type { Drawing } from './photograph';
import { plantGarden } from './plantGarden';

const folder = 'public/demo';
const clock = gardenClock('2021-04-12');
rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });

const photos: { sha256: string; mime: string; file: string }[] = [];
const drawing: Drawing = async (file, picture, light) => {
  // Lossless, and a fifth less than the PNG it is made from.
  const bytes = await sharp(writePng(picture, light)).webp({ lossless: true, effort: 6 }).toBuffer();
  const sha256 = createHash('sha256').update(bytes).digest('hex');
  writeFileSync(`${folder}/${file}`, bytes);
  photos.push({ sha256, mime: 'image/webp', file });
  return new Blob([new Uint8Array(bytes)], { type: 'image/webp' });
};

const opening = await openStore('garden', () => nameOf.collection('0192f000-0000-7000-8000-00000000de00'), {
  newId: clock.newId,
  box: memoryBox(),
  locks: undefined,
  channel: () => undefined,
});
if (opening.state !== 'open') throw new Error('The demo could not be made: its store did not open.');
let surveyor = '';
const desk: Desk = {
  store: opening.store,
  collection: opening.store.collection,
  invented: true,
  now: clock.now,
  today: clock.today,
  newId: clock.newId,
  surveyor: () => surveyor,
};
await plantGarden(
  desk,
  clock,
  (name) => {
    surveyor = name;
  },
  drawing,
);

const entries = await desk.store.allEntries();
writeFileSync(`${folder}/demo.survey.bin`, gzipSync(writeSurvey(desk.collection, entries), { level: 9 }));
writeFileSync(`${folder}/texts.de.bin`, gzipSync(JSON.stringify(inGerman), { level: 9 }));
writeFileSync(`${folder}/photos.json`, JSON.stringify(photos));
opening.store.close();
