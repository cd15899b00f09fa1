import { areaOn, type BodyOf, type Figure, type KnownEye, type Reason, type Thing } from '../record';
import { type ActiveArea, type Scale, severities } from '../trade';
import { activeAreas } from './activeArea';
import { isByEye } from './coverageError';
import { inQuadrature } from './figure';
import { type FindingScore, type ScoringOptions, scoreFinding } from './findingLoss';
import { because } from './reasonCodes';

/** What was recorded at one zone in one round. `day` is the round's date: it says which version of the zone is meant. */
export interface ZoneSeen {
  readonly visit: Thing<'visit'>;
  readonly findings: readonly Thing<'finding'>[];
  readonly zone: Thing<'zone'>;
  readonly day: string;
  /** The eye of who looked, once it is known: its own spread then takes the place of the assumed one. */
  readonly eye?: KnownEye;
}

/** Zone index, 0 to 100, 100 = sound, with its 90 % range from coverage only. */
export interface ZoneScore extends Figure {
  /** Thing name. */
  readonly zone: string;
  readonly state: BodyOf<'visit'>['state'];
  readonly area: BodyOf<'zone'>['versions'][number]['area'];
  readonly significance: number;
  readonly findings: readonly FindingScore[];
  /** m2 of what is not at rest, each held to the zone's area. */
  readonly active: Readonly<Record<ActiveArea, Figure>>;
  /** The one step of severity that would cost most, and the index after it; null where none can go up. */
  readonly worstStep: {
    readonly kind: string;
    readonly from: string;
    readonly to: string;
    readonly value: number;
  } | null;
  /** True where it holds answers carried over: a second figure, never the index. */
  readonly withCarried: boolean;
}

interface Ends {
  readonly loss: number;
  readonly low: number;
  readonly high: number;
}

/** -ln of what a loss leaves. */
const burdenOf = (loss: number): number => -Math.log1p(-loss);

/**
 * Index and range of a zone from the losses in it: Z = 100 x product of (1 - loss). The range adds the findings' own deviations of
 * c = -ln Z in quadrature, each side by itself. The order of the findings does not matter.
 */
export const zoneRange = (
  losses: readonly Ends[],
): { readonly value: number; readonly low: number; readonly high: number } => {
  // Sorted, so that rounding is the same in whatever order they were entered.
  const c = losses
    .map((ends) => ({ value: burdenOf(ends.loss), low: burdenOf(ends.low), high: burdenOf(ends.high) }))
    .sort((a, b) => a.value - b.value || a.low - b.low || a.high - b.high);
  const sum = c.reduce((total, part) => total + part.value, 0);
  const reach = inQuadrature(c);
  const back = (burden: number): number => 100 * Math.exp(-Math.max(0, burden));
  return { value: back(sum), low: back(sum + reach.up), high: back(sum - reach.down) };
};

/** True where every answer in the zone was made this time. */
export const judgedAfresh = (seen: Pick<ZoneSeen, 'visit' | 'findings'>): boolean =>
  (seen.visit.body.state === 'found' || seen.visit.body.state === 'nothing') &&
  seen.findings.every(({ body }) => body.carriedFrom === undefined);

/** All that a zone's score rests on. */
export const seenThings = ({ visit, findings, zone }: ZoneSeen): readonly { readonly heads: readonly string[] }[] => [
  visit,
  ...findings,
  zone,
];

/** How many of these two people spoke of without seeing each other, and nobody settled. */
export const unsettledIn = (things: readonly { readonly heads: readonly string[] }[]): number =>
  things.filter(({ heads }) => heads.length > 1).length;

const worstStepOf = (
  scores: readonly FindingScore[],
  scale: Scale,
  options: ScoringOptions,
): ZoneScore['worstStep'] => {
  const steps = scores.flatMap((score, index) => {
    const at = severities.findIndex(({ id }) => id === score.finding.severity);
    const next = severities[at + 1];
    if (!next || score.loss === 0) return [];
    const worse = scoreFinding({ ...score.finding, severity: next.id }, scale, options);
    const { value } = zoneRange(scores.map((other, i) => (i === index ? worse : other)));
    return [{ kind: score.finding.kind, from: score.finding.severity, to: next.id, value }];
  });
  return steps.sort((a, b) => a.value - b.value || (a.kind < b.kind ? -1 : 1))[0] ?? null;
};

/** Told where a coverage by eye was scored with the surveyor's own spread. */
const ownEyeReasons = (scores: readonly FindingScore[], eye: KnownEye | undefined): readonly Reason[] =>
  eye && scores.some(({ cover, finding }) => cover && finding.coverage && isByEye(finding.coverage))
    ? [because('score: own eye', { sd: eye.sd, pairs: eye.pairs, patches: eye.patches ?? 0 })]
    : [];

const reasonsOf = (
  scores: readonly FindingScore[],
  unsettled: number,
  eye: KnownEye | undefined,
): readonly Reason[] => {
  const biggest = [...scores].sort((a, b) => b.loss - a.loss)[0];
  const first =
    biggest && biggest.loss > 0
      ? [
          because('score: biggest loss', { kind: biggest.finding.kind, loss: biggest.loss }),
          because('score: range from coverage only'),
        ]
      : [];
  const notKnown = scores.filter(({ scored }) => !scored).flatMap(({ reasons }) => reasons);
  return [
    ...(scores.length === 0 ? [because('score: nothing found')] : first),
    ...ownEyeReasons(scores, eye),
    ...notKnown,
    ...(unsettled > 0 ? [because('score: two versions, not settled', { things: unsettled })] : []),
  ];
};

/**
 * Scores one zone. Null where it was not looked at, or where any answer in it was carried over and not judged again: neither is ever
 * scored as looked. With `withCarried` carried answers count as they stand, for the second figure; not looked stays null.
 */
export const scoreZone = (
  seen: ZoneSeen,
  scale: Scale,
  options: ScoringOptions & { readonly withCarried?: boolean } = {},
): ZoneScore | null => {
  const { visit, findings, zone, day } = seen;
  const fresh = judgedAfresh(seen);
  if (visit.body.state === 'not looked' || (!fresh && !options.withCarried)) return null;
  const error = { ...(seen.eye ? { sd: seen.eye.sd } : {}), ...options };
  const scores = findings.map(({ body }) => scoreFinding(body, scale, error));
  const area = areaOn(zone, day);
  return {
    zone: zone.thing,
    ...zoneRange(scores),
    state: visit.body.state,
    area,
    significance: zone.body.significance,
    findings: scores,
    active: activeAreas(scores, area),
    worstStep: worstStepOf(scores, scale, error),
    withCarried: !fresh,
    reasons: reasonsOf(scores, unsettledIn(seenThings(seen)), options.sd === undefined ? seen.eye : undefined),
  };
};
