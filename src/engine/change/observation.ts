import {
  type BodyOf,
  findingsOf,
  type Origin,
  type Reason,
  type SculptureRecord,
  type Thing,
  visitOf,
} from '../record';
import { countOf, kindOf, severityOf } from '../trade';
import { eyeIn } from './eyeOfRound';
import { joinedRating, nothingFound, type Rating, ratingOf } from './rating';
import { because } from './reasonCodes';

export type FindingBody = BodyOf<'finding'>;
type Round = Thing<'round'>;
type Zone = Thing<'zone'>;

/** One side of a comparison: a round, the zones it speaks of and their shares of the joined area. */
export interface Side {
  readonly round: Round;
  readonly zones: readonly Zone[];
  readonly shares: readonly number[];
}

/** Whether a side was judged afresh at all, and if not, why. */
export type SideState =
  | { readonly state: 'judged' }
  | { readonly state: 'carried' | 'not looked'; readonly reason: (when: 'earlier' | 'later') => Reason };

export interface SeriesKey {
  readonly kind: string;
  readonly origin: Origin;
}

/** What one side tells of one series. 'silent': the zone was looked at, other things were recorded, of this nothing was said. */
export interface Observation {
  readonly state: 'seen' | 'nothing' | 'silent' | 'carried';
  /** The finding, its coverage over the joined area; the worst of them where several zones are joined. */
  readonly body?: FindingBody;
  /** Null where the kind is not told by a share or none was given. */
  readonly rating: Rating | null;
  readonly photos: readonly string[];
  readonly things: readonly string[];
  readonly carriedFrom?: string;
}

export const sideState = (record: SculptureRecord, side: Side): SideState => {
  const round = side.round.thing;
  const states = side.zones.map((zone) => {
    const visit = visitOf(record, round, zone.thing);
    if (!visit && findingsOf(record, round, zone.thing).length === 0) return { state: 'not visited' as const };
    return { state: visit?.body.state ?? ('found' as const), visit };
  });
  const first = (state: string) => states.find((s) => s.state === state)?.visit?.body;
  if (states.some((s) => s.state === 'not visited')) {
    return {
      state: 'not looked',
      reason: (when) => because(when === 'earlier' ? 'change: not visited then' : 'change: not visited now', { round }),
    };
  }
  if (states.some((s) => s.state === 'not looked')) {
    const params = { round, why: first('not looked')?.reason ?? '' };
    return {
      state: 'not looked',
      reason: (when) => because(when === 'earlier' ? 'change: not looked then' : 'change: not looked now', params),
    };
  }
  if (states.some((s) => s.state === 'carried')) {
    const params = { round, from: first('carried')?.carriedFrom ?? '' };
    return {
      state: 'carried',
      reason: (when) => because(when === 'earlier' ? 'change: carried then' : 'change: carried now', params),
    };
  }
  return { state: 'judged' };
};

const weight = (body: FindingBody): number =>
  severityOf(body.severity).weight + (body.count ? countOf(body.count).weight : 0);
const worstOf = (bodies: readonly FindingBody[]): FindingBody | undefined =>
  [...bodies].sort(
    (a, b) => weight(b) - weight(a) || b.activity.localeCompare(a.activity) || a.zone.localeCompare(b.zone),
  )[0];

const isThere = (body: FindingBody): boolean =>
  !body.cleared && !(body.coverage?.value === 0 && kindOf(body.kind)?.measure === 'area');

/** What a judged side tells of one series. */
export const observe = (record: SculptureRecord, side: Side, key: SeriesKey): Observation => {
  const eye = eyeIn(record, side.round);
  const parts = side.zones.map((zone, i) => {
    const visit = visitOf(record, side.round.thing, zone.thing);
    const finding = findingsOf(record, side.round.thing, zone.thing).find(
      ({ body }) => body.kind === key.kind && body.origin === key.origin,
    );
    const body = finding && isThere(finding.body) ? finding.body : undefined;
    return { finding, body, visit, share: side.shares[i] ?? 0 };
  });
  const things = parts.flatMap(({ finding, visit }) => [
    ...(visit ? [visit.thing] : []),
    ...(finding ? [finding.thing] : []),
  ]);
  const photos = parts.flatMap(({ body, visit }) => [...(visit?.body.photos ?? []), ...(body?.photos ?? [])]);
  const carried = parts.find(({ finding }) => finding?.body.carriedFrom);
  const shown = worstOf(parts.flatMap(({ body }) => (body ? [body] : [])));
  const zoneCarried = parts.find(({ visit }) => visit?.body.state === 'carried')?.visit;
  if (carried || zoneCarried) {
    const carriedFrom = carried?.finding?.body.carriedFrom ?? zoneCarried?.body.carriedFrom;
    return {
      state: 'carried',
      rating: null,
      photos,
      things,
      ...(shown ? { body: shown } : {}),
      ...(carriedFrom ? { carriedFrom } : {}),
    };
  }
  if (!shown) {
    const said = parts.some(({ finding, visit }) => finding || visit?.body.state === 'nothing');
    return { state: said ? 'nothing' : 'silent', rating: nothingFound(eye), photos, things };
  }
  const counted = kindOf(key.kind)?.measure === 'count';
  if (counted || parts.some(({ body }) => body && !body.coverage))
    return { state: 'seen', body: shown, rating: null, photos, things };
  if (parts.length === 1 && shown.coverage) {
    return { state: 'seen', body: shown, rating: ratingOf(shown.coverage, eye), photos, things };
  }
  const each = parts.map(({ body, share }) => ({
    rating: body?.coverage ? ratingOf(body.coverage, eye) : nothingFound(eye),
    value: body?.coverage?.value ?? 0,
    share,
    low: body?.coverage?.low ?? 0,
    high: body?.coverage?.high ?? 0,
  }));
  const over = (of: (part: (typeof each)[number]) => number) =>
    each.reduce((sum, part) => sum + part.share * of(part), 0);
  const coverage = {
    value: over((p) => p.value),
    low: over((p) => p.low),
    high: over((p) => p.high),
    method: shown.coverage?.method ?? ('ladder, adjusted' as const),
  };
  return { state: 'seen', body: { ...shown, coverage }, rating: joinedRating(each), photos, things };
};

/** Every series either side speaks of, in a fixed order. */
export const seriesIn = (record: SculptureRecord, sides: readonly Side[]): SeriesKey[] => {
  const keys = new Map<string, SeriesKey>();
  for (const { round, zones } of sides) {
    for (const zone of zones) {
      for (const { body } of findingsOf(record, round.thing, zone.thing)) {
        keys.set(`${body.kind}/${body.origin}`, { kind: body.kind, origin: body.origin });
      }
    }
  }
  return [...keys.keys()].sort().flatMap((name) => keys.get(name) ?? []);
};
