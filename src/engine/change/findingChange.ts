import type { Reason, SculptureRecord } from '../record';
import { kindOf } from '../trade';
import { coverageZ } from './coverageDifference';
import { doneReasons } from './doneBetween';
import { eyeIn } from './eyeOfRound';
import { type Draft, notJudged, weighedByZ } from './judge';
import type { Observation } from './observation';
import { because } from './reasonCodes';
import { inTheWayOf, smallestReal } from './smallestReal';
import { thresholds } from './thresholds';
import type { FindingChange, Naming, Seen } from './verdict';
import { type Rounds, type SeriesPair, unsettledReasons, type ZonePair } from './zonePair';

const seen = (o: Observation | undefined): Seen => {
  if (!o) return { state: 'not looked', photos: [] };
  const state = o.state === 'silent' ? 'nothing' : o.state;
  const { coverage, severity, activity, count } = o.body ?? {};
  return {
    state,
    photos: o.photos,
    ...(coverage ? { coverage } : {}),
    ...(severity ? { severity } : {}),
    ...(activity ? { activity } : {}),
    ...(count ? { count } : {}),
  };
};

const namings = (earlier: Observation, later: Observation): Naming[] => {
  if (earlier.state !== 'seen') return later.state === 'seen' ? [{ what: 'new' }] : [];
  if (later.state !== 'seen') return [{ what: 'gone' }];
  return (['severity', 'activity', 'count'] as const).flatMap((what): Naming[] => {
    const [from, to] = [earlier.body?.[what], later.body?.[what]];
    return from && to && from !== to ? [{ what, from, to }] : [];
  });
};

const countRank = ['one', 'two to five', 'more'];

/** Kinds told by count or presence: the class is named, and no error is known to hold a difference against. */
const byStep = (earlier: Observation, later: Observation, counted: boolean): Draft => {
  const rank = (o: Observation): number =>
    o.state !== 'seen' ? -1 : counted ? countRank.indexOf(o.body?.count ?? 'one') : 0;
  const step = rank(later) - rank(earlier);
  const verdict = step > 0 ? 'worse' : step < 0 ? 'better' : 'no sure change';
  const reason = counted
    ? because('change: counted, error not known')
    : because('change: told by presence, error not known');
  return { verdict, z: null, firm: null, reasons: [reason] };
};

/** A new finding no larger than the least step may simply have been overlooked; photos of both times can say. */
const smallAndNew = (earlier: Observation, later: Observation): Reason[] => {
  const small = later.state === 'seen' && (later.body?.coverage?.value ?? 1) <= thresholds.smallNew.value;
  if (!small || earlier.state === 'seen') return [];
  const photos = earlier.photos.length > 0 && later.photos.length > 0;
  return [
    photos
      ? because('change: new, small: photos of both rounds')
      : because('change: new, small: may have been missed before'),
  ];
};

const manner = (earlier: Observation, later: Observation): Reason[] => {
  const [a, b] = [earlier.body?.coverage?.method, later.body?.coverage?.method];
  const eye = (m: string) => (m.startsWith('ladder') ? 'ladder' : m);
  return a && b && eye(a) !== eye(b) ? [because('change: judged in different ways', { earlier: a, later: b })] : [];
};

const draftOf = (pair: SeriesPair, otherPerson: boolean): Draft => {
  const { earlier, later, standing } = pair;
  if (standing.state !== 'judged' || !earlier || !later) {
    return notJudged(standing.state === 'carried' ? 'carried' : 'not comparable', standing.reasons);
  }
  const area = kindOf(pair.kind)?.measure === 'area';
  const withShare = [earlier, later].every((o) => o.state !== 'seen' || o.rating !== null);
  const judged =
    withShare && earlier.rating && later.rating && (area || (earlier.state === 'seen' && later.state === 'seen'))
      ? weighedByZ(coverageZ(earlier.rating, later.rating, otherPerson))
      : byStep(earlier, later, kindOf(pair.kind)?.measure === 'count');
  const overLine = judged.verdict === 'worse' || judged.verdict === 'better';
  const against = later.body?.against === 'same' && overLine ? [because('change: said to be the same')] : [];
  return {
    ...judged,
    reasons: [
      ...standing.reasons,
      ...judged.reasons,
      ...smallAndNew(earlier, later),
      ...manner(earlier, later),
      ...against,
    ],
  };
};

/** A finding over the two rounds, before the page is weighed. */
export interface FindingDraft {
  readonly draft: Draft;
  readonly rest: Omit<FindingChange, keyof Draft | 'clearly' | 'aloneCouldBeChance' | 'clearlyWorse'>;
}

export const findingDraft = (
  record: SculptureRecord,
  rounds: Rounds,
  zone: ZonePair,
  pair: SeriesPair,
): FindingDraft => {
  const { earlier, later } = pair;
  const draft = draftOf(pair, rounds.otherPerson);
  const things = [...(earlier?.things ?? []), ...(later?.things ?? [])];
  const told = draft.verdict === 'carried' || draft.verdict === 'not comparable' ? [] : doneReasons(zone.between);
  const start = pair.standing.state === 'judged' && draft.firm !== null ? earlier?.rating : null;
  return {
    draft: { ...draft, reasons: [...draft.reasons, ...told, ...unsettledReasons(record, things)] },
    rest: {
      series: pair.series,
      zone: zone.zone.thing,
      kind: pair.kind,
      origin: pair.origin,
      earlier: seen(earlier),
      later: seen(later),
      named: pair.standing.state === 'judged' && earlier && later ? namings(earlier, later) : [],
      smallest: start
        ? smallestReal(
            start,
            inTheWayOf(earlier?.body?.coverage, start, eyeIn(record, rounds.later)),
            rounds.otherPerson,
          )
        : null,
      between: zone.between,
    },
  };
};
