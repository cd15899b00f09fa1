import { type Money, mixed } from '../money';
import type { Figure, Reason } from '../record';
import { treatmentOf } from '../trade';
import { waysOf, within } from './front';
import { lossTogether } from './lossOf';
import { because } from './reasonCodes';
import type { ZoneWay } from './waysOfZone';
import type { Weighed } from './weigh';

/** One zone that is treated within the budget. */
export interface Treated {
  readonly sculpture: string;
  readonly zone: string;
  /** Codes of treatments. */
  readonly types: readonly string[];
  readonly cost: Money;
  /** Loss in m2, before and after. */
  readonly before: number;
  readonly after: number;
  /** True where a conservator leads one of the works. */
  readonly askFirst: boolean;
}

/** One zone with loss left in it. */
export interface LeftUndone {
  readonly sculpture: string;
  readonly zone: string;
  readonly m2: number;
  readonly why: Reason;
}

/** What is done within a budget, and what is left. */
export interface BudgetPlan {
  readonly spent: Money;
  readonly done: readonly Treated[];
  /** Paid once for a work. */
  readonly once: readonly { readonly sculpture: string; readonly type: string; readonly cost: Money }[];
  /** The most first. */
  readonly left: readonly LeftUndone[];
  /** m2 of loss left undone, with its 90 % range. */
  readonly undone: Figure;
  /** m2 taken away. */
  readonly taken: number;
}

/** The plan for a budget: of all choices within it the one that leaves least, and of those the cheapest. */
export const planWithin = (weighed: Weighed, budget: Money): BudgetPlan | Reason => {
  const { currency, front, unit, steps, zones } = weighed;
  const two = mixed([{ minor: 0, currency }, budget]);
  if (two) return two;
  const choice = within(front, budget.minor);
  const works = choice ? waysOf(choice) : [];
  const money = (minor: number): Money => ({ minor, currency });
  const chosen = new Map(works.flatMap((work) => waysOf(work.zones)).map((way) => [way.zone.score.zone, way]));
  const done = [...chosen.values()].filter(({ types }) => types.length > 0);
  const leftIn = zones.map(({ score, sculpture, stopWord }) => {
    const ways = weighed.ways.get(score.zone) ?? [];
    const way = chosen.get(score.zone) ?? ways[0];
    return { sculpture, zone: score.zone, loss: way?.left, why: whyLeft(way, ways, stopWord) };
  });
  const undone = (steps - (choice?.gain ?? 0)) * unit;
  const range = lossTogether(leftIn.flatMap(({ sculpture, loss }) => (loss ? [{ sculpture, loss }] : [])));
  return {
    spent: money(choice?.cost ?? 0),
    done: done.map(({ zone, types, cost, left }) => ({
      ...{ sculpture: zone.sculpture, zone: zone.score.zone, types, cost: money(cost) },
      ...{ before: weighed.ways.get(zone.score.zone)?.[0]?.left.value ?? left.value, after: left.value },
      askFirst: types.some((type) => treatmentOf(type)?.askConservator),
    })),
    once: works.flatMap(({ sculpture, once }) =>
      once.map(({ type, cost }) => ({ sculpture, type, cost: money(cost) })),
    ),
    left: leftIn
      .flatMap(({ loss, ...row }) => (loss && loss.value >= unit / 2 ? [{ ...row, m2: loss.value }] : []))
      .sort((a, b) => b.m2 - a.m2 || (a.zone < b.zone ? -1 : 1)),
    undone: {
      value: undone,
      low: Math.min(range.low, undone),
      high: Math.max(range.high, undone),
      reasons: weighed.reasons,
    },
    taken: (choice?.gain ?? 0) * unit,
  };
};

const whyLeft = (way: ZoneWay | undefined, ways: readonly ZoneWay[], stopWord: boolean): Reason => {
  const most = Math.max(0, ...ways.map(({ gain }) => gain));
  if ((way?.gain ?? 0) < most) return because('budget: too little money');
  return stopWord ? because('budget: stop word') : because('budget: no work for it');
};
