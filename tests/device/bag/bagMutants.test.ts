import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checkedBag } from '../../../src/device/bag/checkedBag';
import { opened } from '../../../src/device/bag/opened';
import { unpackedFile } from '../../../src/device/bag/unpackedFile';
import { sayReason } from '../../../src/words';
import '../../../src/words/pastStart';
import { bagMutant } from '../../files/bagMutants';
import { asFile, hashOf } from '../../files/bags';

/** 10,000 in each test run; as many as asked for by hand. A number that fails is found again by its seed and its number. */
const runs = Number(process.env.ZIP_RUNS ?? 10_000);
const seed = Number(process.env.ZIP_SEED ?? 1);
const from = Number(process.env.ZIP_FROM ?? 0);
const crashers = join(import.meta.dirname, '../../files/crashers');

interface Judged {
  taken: number;
  refused: number;
  /** Milliseconds the process worked at the slowest: what a busy machine gives to others is not counted. */
  slowest: number;
  readonly codes: Map<string, number>;
}

const nothingHere = { allEntries: async () => [], photosHere: async () => [] };

const judge = async (bytes: Uint8Array<ArrayBuffer>, into: Judged): Promise<void> => {
  const file = asFile(bytes);
  const started = process.cpuUsage();
  const read = await opened({ store: '', collection: 'collection/x', file }, nothingHere);
  const { user, system } = process.cpuUsage(started);
  into.slowest = Math.max(into.slowest, (user + system) / 1000);
  if (!read.ok) {
    into.refused++;
    expect(read.problems.length).toBeGreaterThan(0);
    for (const problem of read.problems) {
      into.codes.set(problem.code, (into.codes.get(problem.code) ?? 0) + 1);
      const said = sayReason(problem);
      expect(said).not.toBe(problem.code);
      expect(said.replaceAll(/“[^”]*”/g, '')).not.toMatch(/undefined|NaN|\[object/);
    }
    return;
  }
  into.taken++;
  // What is taken is what the hashes say, and lies within the file.
  const bag = await checkedBag(file);
  if (!bag.ok) return;
  for (const photo of bag.photos) {
    expect(hashOf(await unpackedFile(file, photo.file))).toBe(photo.sha256);
    expect(photo.file.start + photo.file.packed).toBeLessThan(bytes.length);
  }
};

describe('A bag altered at random', () => {
  it(
    `${runs} of them: each reads to a sound survey or is refused with sentences, at once`,
    async () => {
      const judged: Judged = { taken: 0, refused: 0, slowest: 0, codes: new Map() };
      for (let n = from; n < from + runs; n++) {
        const bytes = bagMutant(seed, n);
        try {
          await judge(bytes, judged);
        } catch (error) {
          if (process.env.ZIP_KEEP) writeFileSync(join(crashers, `zip-seed-${seed}-number-${n}.zip`), bytes);
          throw new Error(`Mutant ${n} of seed ${seed}: ${error instanceof Error ? error.message : error}`, {
            cause: error,
          });
        }
      }
      expect(judged.slowest).toBeLessThan(2000);
      // The trials are about something: both ends are met, and nearly every fault there is.
      expect(judged.taken).toBeGreaterThan(runs / 50);
      expect(judged.refused).toBeGreaterThan(runs / 2);
      expect([...judged.codes.keys()].filter((code) => code.startsWith('bag: ')).length).toBeGreaterThan(
        runs >= 10_000 ? 22 : 5,
      );
      if (process.env.ZIP_TOLD)
        writeFileSync(process.env.ZIP_TOLD, JSON.stringify({ runs, seed, from, ...judged, codes: [...judged.codes] }));
    },
    Math.max(120_000, runs * 30),
  );

  it('is refused or taken as before, whatever was once found to break the reading', async () => {
    for (const name of existsSync(crashers) ? readdirSync(crashers) : [])
      if (name.endsWith('.zip'))
        await judge(new Uint8Array(readFileSync(join(crashers, name))), {
          taken: 0,
          refused: 0,
          slowest: 0,
          codes: new Map(),
        });
  });
});
