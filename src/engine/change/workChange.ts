import { constants } from '../condition';
import type { Figure, Reason, SculptureRecord } from '../record';
import type { ActiveArea } from '../trade';
import { doneReasons } from './doneBetween';
import { type Draft, judgeSum, notJudged, smallestDifference, varianceOf } from './judge';
import { because } from './reasonCodes';
import { sharedVariance } from './sharedError';
import { addUp, type Sum, times } from './sums';
import type { Contribution, Done } from './verdict';
import type { ZoneDraft } from './zoneChange';
import { type Rounds, unsettledReasons } from './zonePair';

type Judged = ZoneDraft & { readonly sums: NonNullable<ZoneDraft['sums']> };

export interface AreaDraft {
  readonly draft: Draft;
  readonly rest: {
    readonly earlier: Figure;
    readonly later: Figure;
    readonly difference: Figure;
    readonly smallest: number | null;
    readonly contributions: readonly Contribution[];
  };
}

/** The whole work over the two rounds, before the page is weighed. */
export interface WorkDraft {
  readonly index: {
    readonly draft: Draft;
    readonly rest: { readonly earlier: Figure | null; readonly later: Figure | null; readonly smallest: number | null };
  };
  readonly active: Readonly<Record<ActiveArea, AreaDraft>>;
  readonly zonesBoth: number;
  readonly zonesAll: number;
  readonly areaShare: number;
}

const z90 = constants.z90.value;

/** A figure with its 90 % range from coverage only, held between `least` and `most`. */
const ranged = (value: number, variance: number, least: number, most: number): Figure => {
  const reach = z90 * Math.sqrt(variance);
  return { value, low: Math.max(least, value - reach), high: Math.min(most, value + reach), reasons: [] };
};

const sideOf = (sum: Sum, which: 'earlier' | 'later'): { readonly value: number; readonly variance: number } =>
  which === 'earlier'
    ? { value: sum.earlier, variance: sum.ownEarlier + sharedVariance(sum.slopeEarlier, 0, false) }
    : { value: sum.later, variance: sum.ownLater + sharedVariance(0, sum.slopeLater, false) };

const areaDraft = (zones: readonly Judged[], what: ActiveArea, rounds: Rounds, why: readonly Reason[]): AreaDraft => {
  const ways = addUp(zones.map((z) => z.sums.active[what]));
  const sum = ways.asTold;
  const judged = zones.length > 0 ? judgeSum(ways, rounds.otherPerson) : notJudged('not comparable', []);
  const most = zones.reduce((m2, z) => m2 + z.sums.m2, 0);
  const side = (which: 'earlier' | 'later'): Figure => {
    const { value, variance } = sideOf(sum, which);
    return ranged(value, variance, 0, most);
  };
  const variance = varianceOf(sum, rounds.otherPerson);
  const contributions = zones
    .map((z) => ({
      zone: z.pair.zone.thing,
      m2: z.sums.active[what].asTold.later - z.sums.active[what].asTold.earlier,
    }))
    .filter(({ m2 }) => m2 !== 0)
    .sort((a, b) => b.m2 - a.m2 || (a.zone < b.zone ? -1 : 1));
  return {
    draft: { ...judged, reasons: [...judged.reasons, ...why] },
    rest: {
      earlier: side('earlier'),
      later: side('later'),
      difference: ranged(sum.later - sum.earlier, variance, -most, most),
      smallest: smallestDifference(sum, rounds.otherPerson),
      contributions,
    },
  };
};

/** Index as the scoring tells it: the mean of the zones' indices, weighted by area times significance. */
const indexOf = (zones: readonly Judged[], lost: Sum, which: 'earlier' | 'later', weight: number): Figure => {
  const shown = zones.reduce((sum, z) => {
    const figure = which === 'earlier' ? z.rest.earlier : z.rest.later;
    return sum + (z.sums.weight / weight) * (figure?.value ?? 0);
  }, 0);
  return ranged(shown, sideOf(lost, which).variance, 0, 100);
};

/** Judges the work over the zones looked at both times, each with its area of the later round. */
export const workDraft = (
  record: SculptureRecord,
  rounds: Rounds,
  drafts: readonly ZoneDraft[],
  between: readonly Done[],
  areaAll: number,
): WorkDraft => {
  const zones = drafts.filter((d): d is Judged => d.sums !== undefined);
  const m2 = zones.reduce((sum, z) => sum + z.sums.m2, 0);
  const areaShare = areaAll > 0 ? m2 / areaAll : 0;
  const why = [
    because('change: zones compared', { both: zones.length, all: drafts.length, areaShare }),
    ...doneReasons(between),
    ...unsettledReasons(
      record,
      zones.flatMap((z) => z.pair.things),
    ),
  ];
  const none = [because('change: no zone looked at both times')];
  const weight = zones.reduce((sum, z) => sum + z.sums.weight, 0);
  const lost = addUp(zones.map((z) => times(z.sums.lost, z.sums.weight / weight)));
  const judged = judgeSum(lost, rounds.otherPerson);
  const area = (what: ActiveArea) => areaDraft(zones, what, rounds, zones.length > 0 ? why : none);
  return {
    index:
      zones.length > 0
        ? {
            draft: { ...judged, reasons: [...judged.reasons, ...why] },
            rest: {
              earlier: indexOf(zones, lost.asTold, 'earlier', weight),
              later: indexOf(zones, lost.asTold, 'later', weight),
              smallest: smallestDifference(lost.asTold, rounds.otherPerson),
            },
          }
        : { draft: notJudged('not comparable', none), rest: { earlier: null, later: null, smallest: null } },
    active: { green: area('green'), bare: area('bare'), scale: area('scale') },
    zonesBoth: zones.length,
    zonesAll: drafts.length,
    areaShare,
  };
};
