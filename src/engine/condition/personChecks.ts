import type { Reason, SculptureRecord, Thing } from '../record';
import { kindOf } from '../trade';
import { because } from './reasonCodes';

/** Something that could hurt someone: an open check, or a finding of that sort no check was opened for. */
export interface PersonDanger {
  /** Thing name of the zone; missing where the whole sculpture is meant. */
  readonly zone?: string;
  /** Thing name of the open check; missing where none was opened yet. */
  readonly check?: string;
  readonly finding?: string;
  readonly reason: Reason;
}

const isLatest = (record: SculptureRecord, round: Thing<'round'>): boolean =>
  record.rounds.every(({ body }) => body.date <= round.body.date);

/** Open at the end of that round's day; for the latest round, open still: it stands until a named person closes it, and no longer. */
const standsAt = (record: SculptureRecord, round: Thing<'round'>) => {
  const latest = isLatest(record, round);
  return ({ body }: Thing<'personCheck'>): boolean =>
    latest
      ? body.closed === undefined
      : body.opened <= round.body.date && !(body.closed && body.closed.on <= round.body.date);
};

const uncovered = (record: SculptureRecord, round: Thing<'round'>): readonly PersonDanger[] =>
  record.findings
    .filter(({ body }) => body.round === round.thing && !body.cleared && kindOf(body.kind)?.personCheck === true)
    .filter(
      ({ thing, body }) =>
        !record.personChecks.some(
          (check) =>
            check.body.finding === thing ||
            (check.body.finding === undefined && check.body.zone === body.zone && check.body.opened >= round.body.date),
        ),
    )
    .map(({ thing, body }) => ({
      zone: body.zone,
      finding: thing,
      reason: because('class: could hurt someone, no person check yet', { kind: body.kind }),
    }));

const asDanger = ({ thing, body }: Thing<'personCheck'>): PersonDanger => ({
  ...(body.zone === undefined ? {} : { zone: body.zone }),
  ...(body.finding === undefined ? {} : { finding: body.finding }),
  check: thing,
  reason: because('class: person check open', { what: body.what, opened: body.opened }),
});

/** Dangers that stand where no round was made yet: every check that is open. */
export const dangersWithoutRound = (record: SculptureRecord): readonly PersonDanger[] =>
  record.personChecks.filter(({ body }) => body.closed === undefined).map(asDanger);

/** Every danger to people standing at a round, in the order of the record. Stands above every list. */
export const dangersAt = (record: SculptureRecord, round: Thing<'round'>): readonly PersonDanger[] => [
  ...record.personChecks.filter(standsAt(record, round)).map(asDanger),
  ...uncovered(record, round),
];
