import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { smallestDifference, varianceOf } from '../../../src/engine/change/judge';
import type { Sum } from '../../../src/engine/change/sums';

const part = fc.double({ min: 0.01, max: 5, noNaN: true });
const sum: fc.Arbitrary<Sum> = fc.record({
  earlier: part,
  later: part,
  ownEarlier: part,
  ownLater: part,
  slopeEarlier: part,
  slopeLater: part,
});

describe('The smallest difference that would be called real', () => {
  it('is just where the verdict turns: 1.96 of the error of the difference', () => {
    fc.assert(
      fc.property(sum, fc.boolean(), (figure, otherPerson) => {
        const least = smallestDifference(figure, otherPerson) ?? Number.NaN;
        const z = least / Math.sqrt(varianceOf(figure, otherPerson));
        expect(z).toBeCloseTo(1.959963984540054, 12);
      }),
    );
  });

  it('is the same whichever round is called the earlier', () => {
    fc.assert(
      fc.property(sum, fc.boolean(), (figure, otherPerson) => {
        const turned: Sum = {
          earlier: figure.later,
          later: figure.earlier,
          ownEarlier: figure.ownLater,
          ownLater: figure.ownEarlier,
          slopeEarlier: figure.slopeLater,
          slopeLater: figure.slopeEarlier,
        };
        expect(smallestDifference(turned, otherPerson)).toBeCloseTo(smallestDifference(figure, otherPerson) ?? 0, 12);
      }),
    );
  });

  it('is larger where two persons looked, and none where nothing has an error', () => {
    const figure: Sum = { earlier: 1, later: 2, ownEarlier: 0.1, ownLater: 0.1, slopeEarlier: 1, slopeLater: 1 };
    expect(smallestDifference(figure, true)).toBeGreaterThan(smallestDifference(figure, false) ?? 0);
    const sure: Sum = { earlier: 0, later: 0, ownEarlier: 0, ownLater: 0, slopeEarlier: 0, slopeLater: 0 };
    expect(smallestDifference(sure, true)).toBeNull();
  });
});
