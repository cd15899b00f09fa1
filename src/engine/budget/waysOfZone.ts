import type { FindingScore, ZoneScore } from '../condition';
import { type Money, times } from '../money';
import type { BodyOf } from '../record';
import { kindOf, settles, type WorkEffect, workEffectOf } from '../trade';
import type { Way } from './front';
import { type Loss, lossOf } from './lossOf';

export type Price = NonNullable<BodyOf<'yearPlan'>['prices']>[number];

/** A zone that may be treated: its score in the latest round, and whether a stop word was seen there. */
export interface ZoneToTreat {
  readonly sculpture: string;
  readonly score: ZoneScore;
  readonly stopWord: boolean;
}

/** One way to treat a zone: which works, what they cost here in minor units, what is left after them. */
export interface ZoneWay extends Way {
  readonly zone: ZoneToTreat;
  /** Codes of treatments; none is to leave it. */
  readonly types: readonly string[];
  readonly left: Loss;
}

const priced = (prices: readonly Price[], type: string): boolean => prices.some((price) => price.type === type);

/** Works with a price that take something away here; none at a stop word, before a conservator has spoken. */
const worksFor = ({ score, stopWord }: ZoneToTreat, prices: readonly Price[]): readonly WorkEffect[] =>
  [...new Set(prices.map(({ type }) => type))].flatMap((type) => {
    const effect = workEffectOf(type);
    if (!effect || stopWord) return [];
    const helps = score.findings.some((finding) => finding.loss > 0 && takesAway(effect, finding));
    return helps || prices.some((price) => workEffectOf(price.type)?.with === type) ? [effect] : [];
  });

const takesAway = (effect: WorkEffect, { finding, cover }: FindingScore): boolean => {
  const kind = kindOf(finding.kind);
  return kind !== undefined && settles(effect, kind, finding.coverage?.value ?? cover?.value);
};

const costAt = (type: string, zone: ZoneToTreat, prices: readonly Price[]): number =>
  prices
    .filter((price) => price.type === type && price.per !== 'work')
    .reduce((sum, { each, per }) => sum + inZone(each, per, zone).minor, 0);

const inZone = (each: Money, per: Price['per'], { score }: ZoneToTreat): Money =>
  per === 'm2' ? times(each, score.area.m2) : each;

/** Every set of works that makes sense in a zone, to leave it first. `unit` is the m2 of loss one step of gain stands for. */
export const waysOfZone = (zone: ZoneToTreat, prices: readonly Price[], unit: number): readonly ZoneWay[] => {
  const works = worksFor(zone, prices);
  const whole = inSteps(lossOf(zone.score, () => false).value, unit);
  return Array.from({ length: 2 ** works.length }, (_, set) => works.filter((_w, i) => set & (1 << i)))
    .filter((set) => set.every(({ with: other }) => !other || !priced(prices, other) || inSet(set, other)))
    .map((set) => {
      const left = lossOf(zone.score, (score) => set.some((effect) => takesAway(effect, score)));
      const types = set.map(({ type }) => type);
      const cost = types.reduce((sum, type) => sum + costAt(type, zone, prices), 0);
      return { zone, types, cost, left, gain: whole - inSteps(left.value, unit) };
    });
};

const inSet = (set: readonly WorkEffect[], type: string): boolean => set.some((effect) => effect.type === type);

export const inSteps = (m2: number, unit: number): number => Math.round(m2 / unit);
