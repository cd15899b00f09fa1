import { expect, test } from 'vitest';
import { hatches, type Ink, inkAt, type Mark } from '../../../src/engine/photo';

const side = 120;
const marks = Object.keys(hatches) as Mark[];

const drawn = (mark: Mark): Ink[] =>
  Array.from({ length: side * side }, (_, at) => inkAt(hatches[mark], at % side, Math.floor(at / side)));

const share = (inks: readonly Ink[], of: (ink: Ink) => boolean): number => inks.filter(of).length / inks.length;

test.each(marks)('%s shows on dark bronze and on pale green, and lets the surface under it be seen', (mark) => {
  const inks = drawn(mark);
  expect(share(inks, (ink) => ink === 'pale')).toBeGreaterThan(0.005);
  expect(share(inks, (ink) => ink === 'dark')).toBeGreaterThan(0.005);
  expect(share(inks, (ink) => ink !== 'none')).toBeLessThan(0.45);
});

/** Which ways its pale ink runs on for a while: along the picture, up it, and both ways across. */
const runs = (mark: Mark): string => {
  const inks = drawn(mark);
  const long = ([dx, dy]: readonly [number, number], least: number): boolean =>
    inks.some((_, at) =>
      Array.from({ length: least }, (_, i) => [(at % side) + i * dx, Math.floor(at / side) + i * dy] as const).every(
        ([x, y]) => x >= 0 && y >= 0 && x < side && y < side && inks[y * side + x] === 'pale',
      ),
    );
  const ways = { along: [1, 0], up: [0, 1], rising: [1, -1], falling: [1, 1] } as const;
  return Object.entries(ways)
    .filter(([, way]) => long(way, 8))
    .map(([name]) => name)
    .join();
};

test('no two are told apart by colour: each runs another way', () => {
  expect(marks.map((mark) => [mark, runs(mark)])).toEqual([
    ['green', 'rising'],
    ['left out', 'along'],
    ['newly', 'rising,falling'],
    ['no longer', 'falling'],
    ['still', ''],
  ]);
});
