import { describe, expect, it } from 'vitest';
import { checkedBag } from '../../../src/device/bag/checkedBag';
import { unpackedFile } from '../../../src/device/bag/unpackedFile';
import { sayReason } from '../../../src/words';
import '../../../src/words/pastStart';
import { asFile, asZipped, bagged, hashOf, payloadOf, picture, smallBag } from '../../files/bags';
import { hostileBags } from '../../files/hostileBags';
import { smallSurvey } from '../../files/smallSurvey';
import { utf8, zipOf } from '../../files/zipped';

const codesOf = async (bytes: Uint8Array<ArrayBuffer>) => {
  const read = await checkedBag(asFile(bytes));
  return read.ok ? ['taken'] : read.reasons.map(({ code }) => code);
};

describe('A bag nobody should have to fear', () => {
  it.each(hostileBags)('is refused at once with its own sentence: $name', async ({ code, bytes }) => {
    const started = performance.now();
    const read = await checkedBag(asFile(bytes));
    expect(performance.now() - started).toBeLessThan(2000);
    if (read.ok) throw new Error('It was taken.');
    expect([...new Set(read.reasons.map((reason) => reason.code))]).toEqual([code]);
    for (const reason of read.reasons) {
      const said = sayReason(reason);
      expect(said).not.toBe(reason.code);
      expect(said.replaceAll(/“[^”]*”/gs, '')).not.toMatch(/undefined|NaN|\[object|\.\./);
    }
  });
});

/** What a bag comes to: the bytes of its survey and its photos, or that it was refused. */
const comesTo = async (bytes: Uint8Array<ArrayBuffer>): Promise<string> => {
  const file = asFile(bytes);
  const read = await checkedBag(file);
  if (!read.ok) {
    expect(read.reasons.length).toBeGreaterThan(0);
    for (const reason of read.reasons) expect(sayReason(reason)).not.toBe(reason.code);
    return 'refused';
  }
  const parts = [hashOf(await unpackedFile(file, read.survey))];
  for (const photo of read.photos) parts.push(photo.sha256, hashOf(await unpackedFile(file, photo.file)));
  return parts.join(' ');
};

describe('A small bag', () => {
  const good = smallBag();

  it('with any one byte flipped is refused, or comes to the same to the byte', async () => {
    const same = await comesTo(good);
    expect(same).not.toBe('refused');
    let refused = 0;
    for (let at = 0; at < good.length; at++)
      for (const flip of [1, 0x20, 0xff]) {
        const bytes = good.slice();
        bytes[at] = (bytes[at] ?? 0) ^ flip;
        const result = await comesTo(bytes);
        if (result === 'refused') refused++;
        else expect(result, `byte ${at} ^ ${flip}`).toBe(same);
      }
    // What may differ are times, versions and the like, which nobody reads.
    expect(refused / (good.length * 3)).toBeGreaterThan(0.85);
  }, 120_000);

  it('cut at any length is refused', async () => {
    for (let length = 0; length < good.length; length++)
      expect(await comesTo(good.slice(0, length)), `cut at ${length}`).toBe('refused');
  }, 120_000);
});

describe('What an operating system adds', () => {
  const { collection, entries } = smallSurvey();
  const sound = asZipped(bagged(payloadOf(collection, entries.slice(0, 2), [picture(1)])), 'bag/');
  const litter = [
    '__MACOSX/bag/._bagit.txt',
    'bag/.DS_Store',
    'bag/data/photos/Thumbs.db',
    'bag/._bagit.txt',
    'desktop.ini',
  ];

  it('is passed over unread, and said', async () => {
    const folders = ['bag/', 'bag/data/', 'bag/data/photos/', '__MACOSX/'].map((name) => ({ name, bytes: utf8('') }));
    const bytes = zipOf([...folders, ...sound, ...litter.map((name) => ({ name, bytes: utf8('x') }))]);
    const read = await checkedBag(asFile(bytes));
    if (!read.ok) throw new Error(JSON.stringify(read.reasons));
    expect([...read.litter].sort()).toEqual(['__MACOSX/', ...litter].sort());
    expect(read.photos.length).toBe(1);
  });

  it('does not hide a folder that belongs in no bag', async () => {
    expect(await codesOf(zipOf([...sound, { name: 'bag/../x/', bytes: utf8('') }]))).toEqual(['bag: name']);
  });
});
