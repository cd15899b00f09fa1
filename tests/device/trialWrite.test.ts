import { afterEach, expect, test, vi } from 'vitest';
import { deviceBox } from '../../src/device/box';
import { sweepTrial, trialWrite } from '../../src/device/trialWrite';

afterEach(() => vi.restoreAllMocks());

const names = async () => (await indexedDB.databases()).map(({ name }) => name);

test('a trial that goes through says how much was kept, and leaves nothing behind', async () => {
  const heard: number[] = [];
  expect(await trialWrite(10_000_000, (kept) => heard.push(kept))).toEqual({ kept: 12_000_000, whole: true });
  expect(heard).toEqual([4_000_000, 8_000_000, 12_000_000]);
  expect(await names()).not.toContain('patina-round-trial');
});

test('a full tablet is said with what it took, in its own words, and nothing of the trial stays on it', async () => {
  const add = IDBObjectStore.prototype.add;
  let pieces = 0;
  vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(function (this: IDBObjectStore, value: unknown) {
    pieces += 1;
    if (pieces > 2) throw new DOMException('the disk is full', 'QuotaExceededError');
    return add.call(this, value);
  });
  expect(await trialWrite(40_000_000)).toEqual({
    kept: 8_000_000,
    whole: false,
    said: 'QuotaExceededError: the disk is full',
  });
  expect(await names()).not.toContain('patina-round-trial');
});

test('the pieces of a trial cannot be packed smaller than a photo', async () => {
  let written: Uint8Array | undefined;
  const add = IDBObjectStore.prototype.add;
  vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(function (this: IDBObjectStore, value: unknown) {
    written = value as Uint8Array;
    return add.call(this, value);
  });
  await trialWrite(4_000_000);
  const packed = await new Response(
    new Blob([written!.slice()]).stream().pipeThrough(new CompressionStream('gzip')),
  ).arrayBuffer();
  expect(packed.byteLength).toBeGreaterThan(3_990_000);
});

test('a trial that was cut off is taken away at the next start, and no other database', async () => {
  const made = (name: string) =>
    new Promise<void>((resolve) => {
      const opening = indexedDB.open(name, 1);
      opening.onsuccess = () => {
        opening.result.close();
        resolve();
      };
    });
  await made('patina-round-trial');
  await made('somebody-elses');
  await sweepTrial();
  expect(await names()).toContain('patina-round-trial');
  deviceBox.write('patina-round.trial', true);
  await sweepTrial();
  expect(await names()).not.toContain('patina-round-trial');
  expect(await names()).toContain('somebody-elses');
});
