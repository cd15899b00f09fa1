import { type Coverage, constants, coverageSd, fromLogit, logit } from '../condition';
import { coverageNumbers } from './coverageNumbers';
import type { Measurement } from './measured';
import { patchesInZone } from './patchesInZone';
import { aspectOf, type Outline, type Point, type Ring, type Size } from './point';
import { crossesItself } from './polygon';
import { because } from './reasonCodes';
import { tooSmall } from './zoneOnPhoto';

/**
 * Standard deviation of a ring's area, share of width squared, when each corner is off by the hand's error both ways:
 * sqrt(sum of squared distances between the two neighbours of each corner) x error / 2. Propagated through the surveyor's formula.
 */
const areaSd = (ring: Ring, aspect: number): number => {
  const n = ring.length;
  const squares = ring.reduce((sum, _, i) => {
    const [ax, ay] = ring[(i + n - 1) % n] as Point;
    const [bx, by] = ring[(i + 1) % n] as Point;
    return sum + (bx - ax) ** 2 + ((by - ay) * aspect) ** 2;
  }, 0);
  return (coverageNumbers.hand.value * Math.sqrt(squares)) / 2;
};

/** A spread as the bin that has it: even odds from end to end. */
const binHalf = (sd: number): number => Math.sqrt(3) * sd;

/** Share of the zone inside traced patches; where they lie on each other once, and only inside the zone. No patch is 0. */
export const tracedCoverage = (patches: Outline, zone: Outline, size: Size): Measurement => {
  const refused = tooSmall(zone, size);
  const { covered, whole } = patchesInZone(patches, zone);
  if (refused.length > 0 || whole === 0) return { refused };
  const aspect = aspectOf(size);
  const value = Math.min(1, covered / whole);
  const hand = Math.hypot(...patches.map((ring) => areaSd(ring, aspect))) / (whole * aspect);
  const half = binHalf(hand);
  const coverage: Coverage = {
    value,
    low: Math.max(0, value - half),
    high: Math.min(1, value + half),
    method: 'traced',
  };
  const reach = constants.z95.value * coverageSd(coverage);
  const at = logit(value);
  const crossed = patches.filter(crossesItself).length;
  return {
    value,
    low: Math.min(value, fromLogit(at - reach)),
    high: Math.max(value, fromLogit(at + reach)),
    method: 'traced',
    coverage,
    reasons: [
      because('coverage: traced', { patches: patches.length, points: hand }),
      ...(crossed > 0 ? [because('coverage: patch crosses itself', { patches: crossed })] : []),
      because('coverage: share of this photo'),
    ],
  };
};
