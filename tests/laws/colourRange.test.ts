import { describe, expect, it } from 'vitest';
import { drawnFrom } from '../../src/engine/chance';
import { ciede2000, colourDifference, type Lab, meanReading } from '../../src/engine/colour';

const colours = { brown: { L: 28, a: 6, b: 9 }, green: { L: 52, a: -16, b: 6 } } as const;
const rounds = 2000;

/** Placings about a true colour, with a spread of its own in each figure. */
const placings = (normal: () => number, { L, a, b }: Lab, n: number, sd: Lab): Lab[] =>
  Array.from({ length: n }, () => ({ L: L + normal() * sd.L, a: a + normal() * sd.a, b: b + normal() * sd.b }));

const spreads = { 'even in all': { L: 0.8, a: 0.8, b: 0.8 }, 'lightness only': { L: 1.4, a: 0.02, b: 0.02 } } as const;

describe('the range of a difference of two readings', () => {
  for (const [kind, sd] of Object.entries(spreads))
    for (const n of [3, 5, 8])
      it(`cries change where nothing changed in about a tenth of cases or fewer: ${n} placings, spread ${kind}`, () => {
        const { normal } = drawnFrom(n * 31 + kind.length);
        let cried = 0;
        for (let i = 0; i < rounds; i++) {
          const read = () => meanReading(placings(normal, colours.brown, n, sd));
          if (colourDifference(read(), read()).low > 0) cried++;
        }
        // Three standard errors of counting over the tenth, and two points for a spread that lies along one figure.
        expect(cried / rounds).toBeLessThan(0.1 + 0.02 + 3 * Math.sqrt((0.1 * 0.9) / rounds));
      });

  it('holds the true difference in nine of ten cases or more, and is not so wide that nothing is ever found', () => {
    const { normal } = drawnFrom(7);
    const truth = ciede2000(colours.green, { ...colours.green, a: colours.green.a + 6 });
    let held = 0;
    let found = 0;
    for (let i = 0; i < rounds; i++) {
      const from = meanReading(placings(normal, colours.green, 5, spreads['even in all']));
      const to = meanReading(placings(normal, { ...colours.green, a: colours.green.a + 6 }, 5, spreads['even in all']));
      const { low, high } = colourDifference(from, to);
      if (low <= truth && truth <= high) held++;
      if (low > 0) found++;
    }
    expect(held / rounds).toBeGreaterThan(0.9);
    expect(found / rounds).toBeGreaterThan(0.9);
  });
});
