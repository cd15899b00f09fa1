import { type FindingScore, type ZoneScore, zoneRange } from '../condition';
import type { Figure } from '../record';

export type Loss = Omit<Figure, 'reasons'>;

/**
 * Loss of a zone in m2: its area x its weight x the share its index lacks to 100, as in the order of need. With findings taken away
 * it is what is left. The range is that of the coverages and of the area.
 */
export const lossOf = ({ findings, area, significance }: ZoneScore, gone: (score: FindingScore) => boolean): Loss => {
  const z = zoneRange(findings.filter((score) => !gone(score)));
  const lacks = (100 - z.value) / 100;
  const value = area.m2 * lacks;
  const down = Math.hypot((area.m2 * (z.high - z.value)) / 100, lacks * (area.m2 - area.low));
  const up = Math.hypot((area.m2 * (z.value - z.low)) / 100, lacks * (area.high - area.m2));
  return {
    value: significance * value,
    low: significance * Math.max(0, value - down),
    high: significance * Math.min(area.high, value + up),
  };
};

/**
 * Sum of losses. Zones of one work were seen by one eye in one light, so their errors are taken to go one way and add up, which is the
 * most they can; those of different works are their own and add in quadrature.
 */
export const lossTogether = (losses: readonly { readonly sculpture: string; readonly loss: Loss }[]): Loss => {
  const works = [...new Set(losses.map(({ sculpture }) => sculpture))];
  const sumIn = (work: string, of: (loss: Loss) => number): number =>
    losses.reduce((sum, { sculpture, loss }) => sum + (sculpture === work ? of(loss) : 0), 0);
  const value = losses.reduce((sum, { loss }) => sum + loss.value, 0);
  return {
    value,
    low: Math.max(0, value - Math.hypot(...works.map((work) => sumIn(work, (loss) => loss.value - loss.low)))),
    high: value + Math.hypot(...works.map((work) => sumIn(work, (loss) => loss.high - loss.value))),
  };
};
