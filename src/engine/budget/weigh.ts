import type { NeedOf } from '../condition';
import { mixed } from '../money';
import type { Reason } from '../record';
import { type Choice, frontOf } from './front';
import { frontOfWork, type WorkWay } from './frontOfWork';
import { type Loss, lossOf, lossTogether } from './lossOf';
import { because } from './reasonCodes';
import { inSteps, type Price, waysOfZone, type ZoneToTreat, type ZoneWay } from './waysOfZone';

/** All that can be done for money, weighed once; each budget is then read off. */
export interface Weighed {
  readonly currency: string;
  readonly zones: readonly ZoneToTreat[];
  /** Loss in m2 as it stands, nothing done. */
  readonly loss: Loss;
  /** m2 of loss that one step of gain stands for. */
  readonly unit: number;
  /** The loss in steps, nothing done. */
  readonly steps: number;
  /** Every choice no other beats, cheapest first. */
  readonly front: readonly Choice<WorkWay>[];
  /** Ways of each zone, by zone. */
  readonly ways: ReadonlyMap<string, readonly ZoneWay[]>;
  readonly reasons: readonly Reason[];
}

/** All loss is weighed in this many steps: a fortieth of a per cent, far under what a coverage is known to. More of them only take time. */
const stepsOfLoss = 4_000;
/** No finer than a square centimetre. */
const finest = 0.0001;

/** Zones judged in the latest round of each work. */
export const zonesToTreat = (needs: readonly NeedOf[]): readonly ZoneToTreat[] =>
  needs.flatMap(({ record, score, classes }) =>
    score.zones.map((zone) => ({
      sculpture: record.sculpture.thing,
      score: zone,
      stopWord: (classes.zones.find(({ about }) => about === zone.zone)?.stopWords.length ?? 0) > 0,
    })),
  );

/** Weighs every way to spend money on these zones. Refused where prices are of two currencies; without a price nothing can be weighed. */
export const weigh = (zones: readonly ZoneToTreat[], prices: readonly Price[]): Weighed | Reason => {
  const currency = prices[0]?.each.currency;
  if (currency === undefined) return because('budget: no price');
  const two = mixed(prices.map(({ each }) => each));
  if (two) return two;
  const losses = zones.map(({ sculpture, score }) => ({ sculpture, loss: lossOf(score, () => false) }));
  const loss = lossTogether(losses);
  const unit = Math.max(finest, loss.value / stepsOfLoss);
  const ways = new Map(zones.map((zone) => [zone.score.zone, waysOfZone(zone, prices, unit)]));
  const works = [...new Set(zones.map(({ sculpture }) => sculpture))].sort();
  const fronts = works.map((work) => {
    const own = zones.filter(({ sculpture }) => sculpture === work);
    return frontOfWork(
      work,
      own.map(({ score }) => ways.get(score.zone) ?? []),
      prices,
    );
  });
  return {
    ...{ currency, zones, loss, unit, ways },
    steps: losses.reduce((sum, one) => sum + inSteps(one.loss.value, unit), 0),
    front: frontOf(fronts),
    reasons: [
      because('budget: how it is weighed'),
      because('budget: exact to', { m2: unit }),
      because('budget: range'),
      because('budget: not in it'),
    ],
  };
};

export const isWeighed = (x: Weighed | Reason): x is Weighed => 'front' in x;
