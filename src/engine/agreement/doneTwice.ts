import { daysApart, daysBetween, type SculptureRecord, type Thing, visitOf } from '../record';

export interface DoneTwice {
  readonly one: Thing<'round'>;
  readonly other: Thing<'round'>;
  readonly days: number;
}

/**
 * Rounds of a work two people made beside each other: of one type, before or after the wash alike, no more than two weeks apart, by
 * two surveyors who are both named, with a zone at least that both judged. The latest first.
 */
export const roundsDoneTwice = (record: SculptureRecord): readonly DoneTwice[] => {
  const { rounds } = record;
  const inBoth = (one: string, other: string): boolean =>
    record.zones.some(({ thing }) =>
      [one, other].every((round) => ['found', 'nothing'].includes(visitOf(record, round, thing)?.body.state ?? '')),
    );
  return rounds
    .flatMap((one, i) =>
      rounds.slice(i + 1).map((other) => ({ one, other, days: Math.abs(daysBetween(one.body.date, other.body.date)) })),
    )
    .filter(
      ({ one, other, days }) =>
        days <= daysApart &&
        one.body.type === other.body.type &&
        one.body.washed === other.body.washed &&
        one.body.surveyor !== '' &&
        other.body.surveyor !== '' &&
        one.body.surveyor !== other.body.surveyor &&
        inBoth(one.thing, other.thing),
    )
    .sort((a, b) => b.other.body.date.localeCompare(a.other.body.date) || (a.one.thing < b.one.thing ? -1 : 1));
};
