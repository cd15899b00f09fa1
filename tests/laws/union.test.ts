import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readSurvey, unite, writeSurvey } from '../../src/engine/exchange';
import { assemble, type Entry, erasedBy, isErased, isErasure } from '../../src/engine/record';
import { collection } from '../files/entries';
import { clocks, type Deed, lived, livedThrough, standing, steps, timeless, undoneAtOnce } from './histories';
import { enough, runs } from './runs';

const joined = (a: readonly Entry[], b: readonly Entry[]): readonly Entry[] => {
  const united = unite(a, b);
  if (!united.ok) throw new Error(JSON.stringify(united.problems));
  return united.entries;
};
const bytes = (entries: readonly Entry[]): string => new TextDecoder().decode(writeSurvey(collection, entries));
const check = (law: (a: readonly Entry[], b: readonly Entry[], c: readonly Entry[]) => void) =>
  fc.assert(
    fc.property(steps, clocks, (all, time) => {
      const [a = [], b = [], c = []] = lived(all, time);
      law(a, b, c);
    }),
    runs,
  );

describe('Three tablets that were apart and meet', () => {
  it(
    'it does not matter who takes in whom',
    () => {
      check((a, b) => expect(bytes(joined(a, b))).toBe(bytes(joined(b, a))));
    },
    enough,
  );

  it(
    'it does not matter which two meet first',
    () => {
      check((a, b, c) => expect(bytes(joined(a, joined(b, c)))).toBe(bytes(joined(joined(a, b), c))));
    },
    enough,
  );

  it(
    'taking in the same file again, an older one, or nothing changes nothing',
    () => {
      check((a, b) => {
        const both = joined(a, b);
        expect(bytes(joined(both, both))).toBe(bytes(both));
        expect(bytes(joined(both, a))).toBe(bytes(both));
        expect(bytes(joined(both, []))).toBe(bytes(both));
        expect(standing(joined(both, a))).toEqual(standing(both));
      });
    },
    enough,
  );

  it(
    'nothing anybody entered is ever lost but what was erased, and nothing is added',
    () => {
      fc.assert(
        fc.property(steps, clocks, (all, time) => {
          const { tablets, files, ever } = livedThrough(all, time);
          const met = [...tablets, ...files].reduce(joined, []);
          const erased = erasedBy(ever);
          expect(bytes(met)).toBe(bytes(ever.filter((e) => !isErased(erased, e))));
        }),
        runs,
      );
    },
    enough,
  );

  it(
    'what was erased is gone from all of them once they have met, and no file from before brings it back',
    () => {
      fc.assert(
        fc.property(steps, clocks, (all, time) => {
          const { tablets, files, ever } = livedThrough(all, time);
          const met = tablets.reduce(joined, []);
          const erased = erasedBy(ever);
          for (const entries of [
            met,
            ...files.map((file) => joined(met, file)),
            ...files.map((file) => joined(file, met)),
          ]) {
            expect(entries.filter((e) => isErased(erased, e))).toEqual([]);
            expect(bytes(entries)).toBe(bytes(met));
          }
        }),
        runs,
      );
    },
    enough,
  );

  it(
    'come to the same present state, whatever order the entries lie in',
    () => {
      fc.assert(
        fc.property(
          steps,
          clocks,
          fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })),
          (all, time, chance) => {
            const everything = joined(
              lived(all, time)[0] ?? [],
              joined(lived(all, time)[1] ?? [], lived(all, time)[2] ?? []),
            );
            const shuffled = everything
              .map((e) => ({ e, key: chance.next().value as number }))
              .sort((x, y) => x.key - y.key)
              .map(({ e }) => e);
            expect(standing(shuffled)).toEqual(standing(everything));
            expect(bytes(shuffled)).toBe(bytes(everything));
          },
        ),
        runs,
      );
    },
    enough,
  );

  it(
    'one tablet by itself never has two versions of anything',
    () => {
      fc.assert(
        fc.property(steps, clocks, (all, time) => {
          const alone = all.filter((step) => step.do !== 'send');
          for (const entries of lived(alone, time)) {
            for (const { heads } of assemble(entries).values()) expect(heads).toHaveLength(1);
          }
        }),
        runs,
      );
    },
    enough,
  );

  it('meet in these trials with things to settle, with removals and with undone deeds: the laws are not about nothing', () => {
    const trials = fc.sample(fc.tuple(steps, clocks), { numRuns: 500, seed: 7 }).map(([all, time]) => {
      const [a = [], b = [], c = []] = lived(all, time);
      return joined(a, joined(b, c));
    });
    const share = (of: (entries: readonly Entry[]) => boolean) => trials.filter(of).length / trials.length;
    expect(share((es) => [...assemble(es).values()].some((c) => c.heads.length > 1))).toBeGreaterThan(0.3);
    expect(share((es) => es.some((e) => e.gone))).toBeGreaterThan(0.3);
    expect(share((es) => es.some((e) => e.restores))).toBeGreaterThan(0.1);
    expect(share((es) => es.some((e) => e.replaces.length > 1))).toBeGreaterThan(0.02);
    expect(share((es) => es.some(isErasure))).toBeGreaterThan(0.15);
  });
});

describe('A survey carried through a file', () => {
  it(
    'is taken, comes back as it went, and is written as the same bytes again',
    () => {
      check((a, b) => {
        const entries = joined(a, b);
        const file = writeSurvey(collection, entries);
        const back = readSurvey(file);
        expect(back).toMatchObject({ ok: true, collection });
        if (!back.ok) return;
        expect(back.entries).toEqual(entries.map((e) => ({ ...e, replaces: [...e.replaces].sort() })));
        expect(writeSurvey(back.collection, back.entries)).toEqual(file);
      });
    },
    enough,
  );
});

describe('Clocks', () => {
  it(
    'wrong by decades, or running backwards, change nothing but the times that are shown',
    () => {
      fc.assert(
        fc.property(steps, clocks, clocks, (all, one, other) => {
          const meet = (time: typeof one) => {
            const [a = [], b = [], c = []] = lived(all, time);
            return standing(joined(a, joined(b, c)), timeless);
          };
          expect(meet(one)).toEqual(meet(other));
        }),
        runs,
      );
    },
    enough,
  );
});

describe('Undo', () => {
  const lastStep: fc.Arbitrary<Deed> = fc.record({
    do: fc.constantFrom('write' as const, 'remove' as const, 'settle' as const),
    on: fc.integer({ min: 0, max: 2 }),
    pick: fc.integer({ min: 0, max: 50 }),
    say: fc.integer({ min: 0, max: 50 }),
  });

  it(
    'right after a deed leaves everything standing as it stood, and leads as it led',
    () => {
      fc.assert(
        fc.property(steps, clocks, lastStep, (all, time, last) => {
          const [before, after] = undoneAtOnce(all, time, last);
          const was = assemble(before);
          for (const current of assemble(after).values()) {
            const then = was.get(current.thing);
            if (!then) {
              expect(current.gone).toBe(true);
              continue;
            }
            expect(current.lead.body).toEqual(then.lead.body);
            expect([current.gone, current.heads.length, current.line]).toEqual([
              then.gone,
              then.heads.length,
              then.line,
            ]);
          }
        }),
        runs,
      );
    },
    enough,
  );
});
