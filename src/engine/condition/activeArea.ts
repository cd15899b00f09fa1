import type { BodyOf, Figure } from '../record';
import { type ActiveArea, activityOf, kindOf, originOf } from '../trade';
import { figureAround, inQuadrature } from './figure';
import type { FindingScore } from './findingLoss';
import { because } from './reasonCodes';

type Area = BodyOf<'zone'>['versions'][number]['area'];

export const activeKinds: readonly ActiveArea[] = ['green', 'bare', 'scale'];

/** In the metal, not at rest, of a kind that is summed. A stain from above is no green metal, and dirt is none. */
export const countsAs = ({ finding }: FindingScore, what: ActiveArea): boolean =>
  kindOf(finding.kind)?.countsAs === what &&
  originOf(finding.origin).hazard === 'kind' &&
  !activityOf(finding.activity).quiet &&
  !finding.cleared;

/**
 * m2 of one sort in one zone, not over the zone's area, with its 90 % range: the error of each coverage and that of the area, in
 * quadrature, each side by itself.
 */
const activeOf = (scores: readonly FindingScore[], area: Area, what: ActiveArea): Figure => {
  const covers = scores.flatMap((score) => (score.cover && countsAs(score, what) ? [score.cover] : []));
  const total = covers.reduce((sum, cover) => sum + cover.value, 0);
  const share = Math.min(1, total);
  const own = inQuadrature(covers);
  const reach = {
    down: Math.hypot(own.down * area.m2, share * (area.m2 - area.low)),
    up: Math.hypot(own.up * area.m2, share * (area.high - area.m2)),
  };
  const held = total > 1 ? [because('score: active area held to the zone', { what })] : [];
  return figureAround(share * area.m2, reach, { least: 0, most: area.high }, held);
};

/** Green, bare metal and scale that are not at rest, in m2, each by itself. */
export const activeAreas = (scores: readonly FindingScore[], area: Area): Readonly<Record<ActiveArea, Figure>> => ({
  green: activeOf(scores, area, 'green'),
  bare: activeOf(scores, area, 'bare'),
  scale: activeOf(scores, area, 'scale'),
});
