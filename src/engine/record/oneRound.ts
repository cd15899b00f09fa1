import type { Thing } from './current';
import { daysBetween } from './days';
import type { SculptureRecord } from './sculptureRecord';

/** Two rounds begun apart that a person may want to say are one. */
export interface PairOfRounds {
  readonly earlier: Thing<'round'>;
  readonly later: Thing<'round'>;
}

/** A walk around one sculpture by two people is done within this many days: chosen for this project. */
export const daysApart = 14;

const toldApart = (a: Thing<'round'>, b: Thing<'round'>): boolean =>
  (a.body.apartFrom ?? []).includes(b.thing) || (b.body.apartFrom ?? []).includes(a.thing);

/** Rounds of one type, begun on two devices within two weeks, that nobody has yet said to be one or apart. */
export const roundsThatMayBeOne = (record: SculptureRecord): readonly PairOfRounds[] =>
  record.rounds.flatMap((earlier, i) =>
    record.rounds
      .slice(i + 1)
      .filter(
        (later) =>
          later.body.type === earlier.body.type &&
          later.lead.device !== earlier.lead.device &&
          Math.abs(daysBetween(earlier.body.date, later.body.date)) <= daysApart &&
          !toldApart(earlier, later),
      )
      .map((later) => ({ earlier, later })),
  );
