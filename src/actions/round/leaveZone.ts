import { coverageConflicts } from '../../engine/condition';
import {
  bodiesOf,
  findingsOf,
  idPart,
  type Leaving,
  nameOf,
  refusal,
  standing,
  type Thing,
  type ZoneBodies,
  type ZoneDraft,
} from '../../engine/record';
import { kindOf } from '../../engine/trade';
import { type Change, commitChanges } from '../commitChanges';
import type { Desk, Outcome } from '../desk';
import { inTurn } from '../inTurn';
import { attempt, must, refuse } from '../outcome';
import { roundDeed, roundRefusal } from './reasonCodes';
import { type AtHand, memoryOf } from './roundMemory';
import { placeNote, rememberNoted } from './roundUnderWay';
import { nextOnWalk, walkOf } from './walk';

/** Why the zone cannot be left this way; also kinds that exclude each other and surely pass the whole zone. */
export const whyNotLeave = (draft: ZoneDraft, leaving: Leaving) =>
  refusal(draft, leaving) ??
  coverageConflicts(standing(draft)).find((conflict) => conflict.code === 'coverage: more than the whole zone');

/** One name for the check a finding opens, so that leaving the zone twice, or on two tablets, opens one. */
const checkName = (finding: Thing<'finding'>['body']): string =>
  nameOf.personCheck(`${idPart(finding.round)}/${idPart(finding.zone)}/${finding.kind}`);

const findingName = (f: Thing<'finding'>['body']): string => nameOf.finding(f.round, f.zone, f.kind, f.origin);

/** A danger already known from an earlier round keeps its check, which now speaks of what was seen this time. */
const personChecks = ({ record }: AtHand, zone: Thing<'zone'>, bodies: ZoneBodies, today: string): Change[] =>
  bodies.findings.flatMap((f): Change[] => {
    const kind = kindOf(f.kind);
    if (!kind?.personCheck || f.cleared || f.carriedFrom) return [];
    const thing = checkName(f);
    if (record.personChecks.some((check) => check.thing === thing)) return [];
    const finding = findingName(f);
    const known = record.personChecks.find(
      ({ body }) => !body.closed && body.zone === f.zone && body.finding?.includes(`/${f.kind}/`),
    );
    if (known) return [{ thing: known.thing, patch: { finding } }];
    const what = `${zone.body.letter}, ${zone.body.name}: ${kind.name}`;
    const body = { sculpture: f.sculpture, zone: f.zone, finding, what, opened: today };
    return [{ thing, kind: 'personCheck', within: f.sculpture, body }];
  });

/** Findings of this round that the zone held and no longer holds, with the checks they had opened. */
const takenBack = ({ record }: AtHand, round: string, zone: string, bodies: ZoneBodies): Change[] => {
  const kept = new Set(bodies.findings.map(findingName));
  const away = findingsOf(record, round, zone).filter((f) => !kept.has(f.thing));
  const keptKinds = new Set(bodies.findings.map((f) => f.kind));
  const checks = away
    .filter((f) => !keptKinds.has(f.body.kind))
    .flatMap((f) => record.personChecks.filter((check) => check.thing === checkName(f.body) && !check.body.closed));
  return [...away, ...checks].map(({ thing }) => ({ thing, gone: true as const }));
};

const said = (bodies: ZoneBodies): Change[] => [
  {
    thing: nameOf.visit(bodies.visit.round, bodies.visit.zone),
    kind: 'visit',
    within: bodies.visit.sculpture,
    body: bodies.visit,
  },
  ...bodies.findings.map(
    (body): Change => ({ thing: findingName(body), kind: 'finding', within: body.sculpture, body }),
  ),
];

/**
 * Leaves an open zone: one visit, one entry per finding and the person checks they open, in one strict transaction that settles the
 * touches. Gives the zone to go on with; none when every zone has its answer.
 */
export const leaveZone = (
  desk: Desk,
  round: string,
  zone: string,
  leaving: Leaving,
): Promise<Outcome<{ readonly state: ZoneBodies['visit']['state']; readonly next: string | undefined }>> =>
  attempt(async () => {
    const memory = memoryOf(desk, round);
    // Touches made in haste just before are folded in first.
    await inTurn(desk.store, async () => undefined);
    const atHand = (await memory.ready()) ?? refuse(roundRefusal('round: not here', {}));
    const draft = memory.draftOf(zone) ?? refuse(roundRefusal('round: zone not here', {}));
    const why = whyNotLeave(draft, leaving);
    if (why) refuse(why);
    const place = atHand.record.zones.find((z) => z.thing === zone) as Thing<'zone'>;
    const bodies = bodiesOf(draft, leaving);
    const changes = [
      ...said(bodies),
      ...takenBack(atHand, round, zone, bodies),
      ...personChecks(atHand, place, bodies, desk.today()),
    ];
    const settles = memory.openTouches(zone).map((row) => row.n);
    const name = roundDeed('deed: zone recorded', {
      letter: place.body.letter,
      state: bodies.visit.state,
      round,
      zone,
    });
    const walk = walkOf(atHand.record, atHand.round, (z) => memory.openTouches(z).length > 0);
    const next = nextOnWalk(walk, zone);
    must(
      await memory.during(
        () =>
          commitChanges(desk, name, changes, {
            ...(settles.length > 0 ? { settlesTouches: settles } : {}),
            // With the answer, not after it: a tablet that ends between the two opens at the zone to go on with.
            ...(next ? { notes: placeNote(round, next) } : {}),
          }),
        changes.map((change) => change.thing),
        settles,
      ),
    );
    if (next) rememberNoted(desk, round, next);
    return { state: bodies.visit.state, next };
  });
