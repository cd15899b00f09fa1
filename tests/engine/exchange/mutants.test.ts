import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Ajv2020 from 'ajv/dist/2020';
import { describe, expect, it } from 'vitest';
import { scoreRound } from '../../../src/engine/condition';
import {
  adviceOn,
  findingsCsv,
  partialCarry,
  previewImport,
  problemReasons,
  readSurvey,
  surveySchema,
  unite,
  writeSurvey,
} from '../../../src/engine/exchange';
import { crc32 } from '../../../src/engine/exchange/crc32';
import { assemble, type Current, type Entry, gather, type Reason } from '../../../src/engine/record';
import '../../../src/words/pastStart';
import { sayReason } from '../../../src/words';
import { mutant } from '../../files/mutants';
import { smallSurvey } from '../../files/smallSurvey';

/** 10,000 in each test run; as many as asked for by hand. A number that fails is found again by its seed and its number. */
const runs = Number(process.env.FUZZ_RUNS ?? 10_000);
const seed = Number(process.env.FUZZ_SEED ?? 1);
const from = Number(process.env.FUZZ_FROM ?? 0);
const crashers = join(import.meta.dirname, '../../files/crashers');

const { collection, entries } = smallSurvey();
const text = (of: readonly Entry[]) => new TextDecoder().decode(writeSurvey(collection, of));
/** The whole survey, and one small file for each entry with what it stands on: each kind of body is met often. */
const good = [
  text(entries),
  ...entries.map((entry) => text(entries.filter((e) => e.id === entry.id || entry.replaces.includes(e.id)))),
];
const checked = (rest: string) => `{"check":"crc32:${crc32(new TextEncoder().encode(rest))}",${rest}`;

const sentenceOf = (reason: Reason): void => {
  const expected = (problemReasons as Record<string, readonly string[]>)[reason.code];
  expect(expected, reason.code).toBeDefined();
  expect(Object.keys(reason.params).sort()).toEqual([...(expected ?? [])].sort());
  const said = sayReason(reason);
  expect(said).not.toBe(reason.code);
  expect(said).not.toContain('“undefined”');
  // What stands in the file is quoted as it stands there.
  const own = said.replaceAll(/“[^”]*”/g, '').replaceAll(String(reason.params.where ?? '“'), '');
  expect(own).not.toMatch(/undefined|NaN|\[object/);
  expect(said.length).toBeLessThan(700);
  expect(Object.hasOwn(adviceOn, reason.code)).toBe(true);
};

/** What is done with every survey that is taken: nothing of it may fail, whatever it says. */
const used = (here: readonly Entry[], theirs: { readonly collection: string; readonly entries: readonly Entry[] }) => {
  const within = new Map<string, Current[]>();
  for (const current of assemble(theirs.entries).values())
    within.set(current.within, [...(within.get(current.within) ?? []), current]);
  for (const own of within.values()) {
    const record = gather(own);
    for (const round of record?.rounds ?? []) {
      const score = record && scoreRound(record, round.thing);
      for (const value of [score?.value, score?.low, score?.high])
        if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
    }
  }
  findingsCsv(theirs.entries);
  partialCarry(theirs.entries, { sculptures: [...within.keys()], without: ['names', 'places'] });
  unite(here, theirs.entries);
  previewImport({ collection, entries: here }, theirs);
};

interface Judged {
  taken: number;
  refused: number;
  slowest: number;
  readonly codes: Map<string, number>;
}

const judge = (bytes: Uint8Array, into: Judged): void => {
  const started = performance.now();
  const read = readSurvey(bytes);
  into.slowest = Math.max(into.slowest, performance.now() - started);
  if (!read.ok) {
    into.refused++;
    expect(read.problems.length).toBeGreaterThan(0);
    for (const problem of read.problems) {
      into.codes.set(problem.code, (into.codes.get(problem.code) ?? 0) + 1);
      sentenceOf(problem);
    }
    return;
  }
  into.taken++;
  for (const note of read.notes) expect(sayReason(note)).not.toBe(note.code);
  const written = writeSurvey(read.collection, read.entries);
  const again = readSurvey(written);
  if (!again.ok) throw new Error(`Written from what was taken, and refused: ${JSON.stringify(again.problems)}`);
  expect(Buffer.from(writeSurvey(again.collection, again.entries)).equals(written)).toBe(true);
  used(entries, read);
};

describe('A file altered at random', () => {
  it(
    `${runs} of them: each reads to a sound survey that can be used and written again, or is refused with sentences, at once`,
    () => {
      const judged: Judged = { taken: 0, refused: 0, slowest: 0, codes: new Map() };
      for (let n = from; n < from + runs; n++) {
        const bytes = mutant(good, seed, n, checked);
        try {
          judge(bytes, judged);
        } catch (error) {
          if (process.env.FUZZ_KEEP) {
            mkdirSync(crashers, { recursive: true });
            writeFileSync(join(crashers, `seed-${seed}-number-${n}.json`), bytes);
          }
          throw new Error(`Mutant ${n} of seed ${seed}: ${error instanceof Error ? error.message : error}`, {
            cause: error,
          });
        }
        if (({} as Record<string, unknown>).mine !== undefined)
          throw new Error(`Mutant ${n} of seed ${seed} got into the machinery.`);
      }
      expect(judged.slowest).toBeLessThan(2000);
      // The trials are about something: both ends are met, and nearly every problem there is.
      expect(judged.taken).toBeGreaterThan(runs / 50);
      expect(judged.refused).toBeGreaterThan(runs / 2);
      expect(judged.codes.size).toBeGreaterThan(runs >= 10_000 ? 28 : 5);
      if (process.env.FUZZ_TOLD)
        writeFileSync(process.env.FUZZ_TOLD, JSON.stringify({ runs, seed, from, ...judged, codes: [...judged.codes] }));
    },
    Math.max(120_000, runs * 20),
  );

  it('is judged by the published schema as by the reading, as far as a schema can judge', () => {
    // Formats are said to it, not judged by it.
    const valid = new Ajv2020({ strict: false, validateFormats: false }).compile(surveySchema());
    const ofSchema = new Set(['wrong sort of value', 'value missing', 'number out of range', 'word not known']);
    const met = { taken: 0, refused: 0 };
    for (let n = from; n < from + runs / 5; n++) {
      const bytes = mutant(good, seed, n, checked);
      const read = readSurvey(bytes);
      if (!read.ok && !read.problems.every(({ code }) => ofSchema.has(code))) continue;
      const file = JSON.parse(new TextDecoder().decode(bytes)) as unknown;
      met[read.ok ? 'taken' : 'refused']++;
      expect(valid(file), `Mutant ${n} of seed ${seed}: ${JSON.stringify(valid.errors?.[0])}`).toBe(read.ok);
    }
    expect(Math.min(met.taken, met.refused)).toBeGreaterThan(runs / 100);
  });

  it('is refused or taken as before, whatever was once found to break the reading', () => {
    for (const name of existsSync(crashers) ? readdirSync(crashers) : []) {
      judge(new Uint8Array(readFileSync(join(crashers, name))), { taken: 0, refused: 0, slowest: 0, codes: new Map() });
    }
  });
});
