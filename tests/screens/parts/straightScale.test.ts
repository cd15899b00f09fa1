import { scaleLinear } from 'd3-scale';
import { expect, it } from 'vitest';
import { straightScale } from '../../../src/screens/parts/charts/straightScale';
import { seeded } from '../../files/seeded';

it('places, marks and rounds as the scale of d3 does, over 500 drawn domains', () => {
  const draw = seeded(5);
  const number = () => (draw.below(2_000_001) - 1_000_000) / 10 ** draw.below(7);
  for (let i = 0; i < 500; i++) {
    const domain: [number, number] = i % 50 === 0 ? [3, 3] : [number(), number()];
    const range: [number, number] = [draw.below(100), 400 + draw.below(400)];
    const [ours, theirs] = [straightScale(domain, range), scaleLinear(domain, range)];
    const value = number();
    expect(ours(value)).toBeCloseTo(theirs(value), 6);
    for (const count of [4, 5, 8]) expect(ours.ticks(count)).toEqual(theirs.ticks(count));
    // Ends are rounded where the domain rises, as those of all charts do.
    if (domain[0] < domain[1])
      expect(
        ours
          .nice()
          .domain()
          .map((end) => end + 0),
      ).toEqual(
        theirs
          .nice()
          .domain()
          .map((end) => end + 0),
      );
    expect(ours.range()).toEqual(range);
  }
});
