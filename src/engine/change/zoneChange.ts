import { scoreFinding, zoneRange } from '../condition';
import { areaOn, type Figure, type Reason, type SculptureRecord } from '../record';
import type { ActiveArea, Scale } from '../trade';
import { doneReasons } from './doneBetween';
import { eyeIn } from './eyeOfRound';
import { type Draft, judgeSum, notJudged, smallestDifference } from './judge';
import { because } from './reasonCodes';
import { activeWays, burdenWays } from './seriesSums';
import { addUp, eachWay, pointsLost, times, type Ways } from './sums';
import type { ZoneChange } from './verdict';
import { type Rounds, unsettledReasons, type ZonePair } from './zonePair';

/** A zone over the two rounds, before the page is weighed; its sums are missing where it is not judged. */
export interface ZoneDraft {
  readonly pair: ZonePair;
  readonly draft: Draft;
  readonly rest: Omit<ZoneChange, keyof Draft | 'clearly' | 'aloneCouldBeChance' | 'clearlyWorse'>;
  readonly sums?: {
    /** Points lost, 100 - Z. */
    readonly lost: Ways;
    /** m2, with the areas of the later round. */
    readonly active: Readonly<Record<ActiveArea, Ways>>;
    readonly m2: number;
    /** Area times significance. */
    readonly weight: number;
  };
}

/** The zone's index over the findings judged both times, with its 90 % range from coverage only. */
const indexOver = (record: SculptureRecord, pair: ZonePair, which: 'earlier' | 'later', scale: Scale): Figure => {
  const eye = eyeIn(record, pair[which].round);
  const error = eye === undefined ? {} : { sd: eye };
  const scores = pair.series.flatMap((s) => {
    const seen = s[which];
    return s.standing.state === 'judged' && seen?.state === 'seen' && seen.body
      ? [scoreFinding(seen.body, scale, error)]
      : [];
  });
  return { ...zoneRange(scores), reasons: [] };
};

/** The area of the joined zones as it is at the later round, m2, and its significance, a mean over the area. */
const weigh = (pair: ZonePair, rounds: Rounds): { readonly m2: number; readonly weight: number } => {
  const { zones, round } = rounds.turned ? pair.earlier : pair.later;
  const areas = zones.map((zone) => ({ m2: areaOn(zone, round.body.date).m2, significance: zone.body.significance }));
  return {
    m2: areas.reduce((sum, a) => sum + a.m2, 0),
    weight: areas.reduce((sum, a) => sum + a.m2 * a.significance, 0),
  };
};

const heldToZone = (ways: Ways): Ways =>
  eachWay(ways, (sum) => ({ ...sum, earlier: Math.min(1, sum.earlier), later: Math.min(1, sum.later) }));

export const zoneDraft = (record: SculptureRecord, rounds: Rounds, pair: ZonePair, scale: Scale): ZoneDraft => {
  const rest = {
    zone: pair.zone.thing,
    zonesThen: pair.earlier.zones.map((z) => z.thing),
    zonesNow: pair.later.zones.map((z) => z.thing),
    earlier: null,
    later: null,
    smallest: null,
    between: pair.between,
  };
  if (pair.standing.state !== 'judged')
    return { pair, draft: notJudged(pair.standing.state, pair.standing.reasons), rest };
  const leftOut = pair.series.filter((s) => s.standing.state !== 'judged');
  const partly: Reason[] =
    leftOut.length > 0 ? [because('change: some findings left out', { count: leftOut.length })] : [];
  if (partly.length > 0 && leftOut.length === pair.series.length) {
    const carried = leftOut.every((s) => s.standing.state === 'carried');
    return { pair, draft: notJudged(carried ? 'carried' : 'not comparable', partly), rest };
  }
  const burdens = addUp(pair.series.map((s) => burdenWays(s, scale)));
  const judged = judgeSum(burdens, rounds.otherPerson);
  const { m2, weight } = weigh(pair, rounds);
  const active = (what: ActiveArea): Ways => times(heldToZone(addUp(pair.series.map((s) => activeWays(s, what)))), m2);
  return {
    pair,
    draft: {
      ...judged,
      reasons: [
        ...pair.standing.reasons,
        ...partly,
        ...judged.reasons,
        ...doneReasons(pair.between),
        ...unsettledReasons(record, pair.things),
      ],
    },
    rest: {
      ...rest,
      earlier: indexOver(record, pair, 'earlier', scale),
      later: indexOver(record, pair, 'later', scale),
      smallest: smallestDifference(pointsLost(burdens).asTold, rounds.otherPerson),
    },
    sums: {
      lost: pointsLost(burdens),
      active: { green: active('green'), bare: active('bare'), scale: active('scale') },
      m2,
      weight,
    },
  };
};
