import { expect, test } from 'vitest';
import { checkedBag } from '../../../src/device/bag/checkedBag';
import { asFile, asZipped, bagged, hashOf, payloadOf, picture, smallBag } from '../../files/bags';
import { smallSurvey } from '../../files/smallSurvey';
import { zipOf } from '../../files/zipped';

const { collection, entries } = smallSurvey();
const sound = bagged(payloadOf(collection, entries.slice(0, 3), [picture(1), picture(2)]));

const opened = async (bytes: Uint8Array<ArrayBuffer>) => {
  const read = await checkedBag(asFile(bytes));
  return read.ok ? read.photos.map((photo) => photo.sha256).sort() : read.reasons.map((reason) => reason.code);
};
const photos = [hashOf(picture(1)), hashOf(picture(2))].sort();

test('a sound bag is read whole, however it was zipped', async () => {
  expect(await opened(zipOf(asZipped(sound)))).toEqual(photos);
  expect(await opened(zipOf(asZipped(sound, 'patina-round-2026-10-15/')))).toEqual(photos);
  expect(await opened(zipOf(asZipped(sound, 'Ordner/bag/')))).toEqual(photos);
  expect(await opened(zipOf(asZipped(sound, 'bag/', { deflated: true })))).toEqual(photos);
  expect(await opened(zipOf(asZipped(sound, 'bag/', { behind: 'signed' })))).toEqual(photos);
  expect(await opened(zipOf(asZipped(sound, 'bag/', { behind: 'plain', deflated: true })))).toEqual(photos);
  expect(await opened(zipOf(asZipped(sound, 'bag/', { large: true }), { large: true }))).toEqual(photos);
});

test('the small bag of the other tests is sound', async () => {
  expect(await opened(smallBag())).toEqual([hashOf(picture(1))]);
});
