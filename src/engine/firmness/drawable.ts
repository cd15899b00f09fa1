import { type Drawn, drawnFrom, seedOf } from '../chance';
import { constants, coverageSd, type FindingScore, levelOf, logit, type NeedOf, pressesFrom } from '../condition';
import type { Thing } from '../record';
import { coverageMethodOf, originOf, scaleOf } from '../trade';
import { firmnessNumbers } from './numbers';

/** A work's place in the order, with what of its zones' urgency hangs on no index and no coverage. */
export interface FirmNeed extends NeedOf {
  /** By zone: the urgency class the rule would give whatever its index and coverages were; 0 where it is not named. */
  readonly urgencyFloor: ReadonlyMap<string, number>;
}

/** What is drawn once for many findings: places in the list of what is shared. */
interface SharedBy {
  readonly day: number;
  readonly person: number;
}

/** How the extent of a finding is drawn: around what was told, between nothing and all, or not at all. */
export type Extent =
  | { readonly told: 'share'; readonly at: number; readonly sd: number; readonly shared: SharedBy | null }
  | { readonly told: 'not' }
  | { readonly told: 'certain'; readonly extent: number };

/** A finding made ready to be drawn. Its loss: hazard (redrawn) x rest x extent (redrawn), held as scoreFinding holds it. */
export interface DrawableFinding {
  readonly hazard: number;
  /** Place of its kind's factor in the list of what is shared. */
  readonly kind: number;
  /** Severity x activity. */
  readonly rest: number;
  readonly extent: Extent;
  /** Coverage from which it makes its zone UC1; Infinity where it never does. */
  readonly pressesFrom: number;
  readonly own: Drawn;
}

export interface DrawableZone {
  readonly sculpture: string;
  readonly zone: string;
  /** Area x significance, m2. */
  readonly size: number;
  readonly findings: readonly DrawableFinding[];
  /** Urgency class a person set, or null. */
  readonly set: number | null;
  readonly floor: number;
  readonly actionLevel: number;
  /** Burden expected to come by the next round, with its standard deviation; null without a forecast. */
  readonly growth: { readonly at: number; readonly sd: number; readonly own: Drawn } | null;
}

/** One number of a draw that many findings share. */
export interface SharedDraw {
  readonly what: 'kind' | 'day' | 'person';
  readonly own: Drawn;
}

export interface Drawable {
  readonly zones: readonly DrawableZone[];
  readonly shared: readonly SharedDraw[];
}

/** Every number is drawn by a seed made of the name of its thing, so that the order of the works changes nothing. */
export const drawable = (needs: readonly FirmNeed[], seed: number): Drawable => {
  const shared: SharedDraw[] = [];
  const places = new Map<string, number>();
  const placeOf = (what: SharedDraw['what'], name: string): number => {
    const key = `${what} ${name}`;
    const known = places.get(key) ?? shared.push({ what, own: drawnFrom(seedOf(key, seed)) }) - 1;
    places.set(key, known);
    return known;
  };
  const zones = needs.flatMap((need) => zonesOf(need, seed, placeOf));
  return { zones, shared };
};

type PlaceOf = (what: SharedDraw['what'], name: string) => number;

const zonesOf = (need: FirmNeed, seed: number, placeOf: PlaceOf): DrawableZone[] => {
  const { record, score, classes, urgencyFloor, growth } = need;
  const round = record.rounds.find(({ thing }) => thing === score.round);
  if (!round) return [];
  const sculpture = record.sculpture.thing;
  const eye = record.eyes[round.body.surveyor];
  const shared: SharedBy = {
    day: placeOf('day', round.thing),
    // Who was not named may be anybody: a person of that round's own.
    person: placeOf('person', round.body.surveyor || round.thing),
  };
  const { actionLevel } = scaleOf(record.scale);
  return score.zones.flatMap((zone) => {
    const own = classes.zones.find(({ about }) => about === zone.zone);
    if (!own || levelOf(own, 'urgency') === null) return [];
    const grown = growth?.get(zone.zone);
    const drawnBy = (name: string): Drawn => drawnFrom(seedOf(name, seed));
    return [
      {
        sculpture,
        zone: zone.zone,
        size: zone.area.m2 * zone.significance,
        findings: zone.findings
          .filter(({ loss }) => loss > 0)
          .map((finding) => findingOf(finding, round, eye?.sd, shared, placeOf, drawnBy)),
        set: own.set?.urgency ?? null,
        floor: urgencyFloor.get(zone.zone) ?? 0,
        actionLevel,
        growth: grown
          ? {
              at: grown.value,
              sd: (grown.high - grown.low) / (2 * constants.z90.value),
              own: drawnBy(`growth ${zone.zone}`),
            }
          : null,
      },
    ];
  });
};

const findingOf = (
  score: FindingScore,
  round: Thing<'round'>,
  eye: number | undefined,
  shared: SharedBy,
  placeOf: PlaceOf,
  drawnBy: (name: string) => Drawn,
): DrawableFinding => {
  const { finding, parts, cover } = score;
  const stain = originOf(finding.origin).hazard === 'stain';
  return {
    hazard: parts.hazard,
    kind: placeOf('kind', stain ? 'stain from above' : finding.kind),
    rest: parts.severity * parts.activity,
    extent: extentOf(score, eye, shared),
    pressesFrom: cover ? (pressesFrom(score) ?? Number.POSITIVE_INFINITY) : Number.POSITIVE_INFINITY,
    own: drawnBy(`${round.thing} ${finding.zone} ${finding.kind} ${finding.origin}`),
  };
};

const extentOf = ({ finding, parts, cover }: FindingScore, eye: number | undefined, shared: SharedBy): Extent => {
  const { coverage } = finding;
  if (!cover) return { told: 'certain', extent: parts.extent };
  if (!coverage) return { told: 'not' };
  return {
    told: 'share',
    at: logit(coverage.value),
    sd: coverageSd(coverage, eye === undefined ? {} : { sd: eye }),
    shared: coverageMethodOf(coverage.method).sharedByDay ? shared : null,
  };
};

/** Standard deviations on the logit of what findings share, and the share a hazard is redrawn within. */
export const spread = {
  day: constants.daySd.value,
  person: firmnessNumbers.personSd.value,
  kind: firmnessNumbers.weight.value,
} as const;
