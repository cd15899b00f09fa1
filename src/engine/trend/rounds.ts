import { comparable } from '../change';
import { type DayScores, roundDay } from '../condition';
import { areaOn, type SculptureRecord, type Thing, zonesAt } from '../record';

type Round = Thing<'round'>;

/** A round of a series, scored. */
export interface SeriesRound {
  readonly round: Round;
  readonly day: DayScores;
  readonly seenShare: number;
}

/** Rounds that may stand in one series: of the kind and state most rounds are of, the latest such kind where two are as many. */
export const alikeRounds = (
  record: SculptureRecord,
): { readonly alike: readonly Round[]; readonly leftOut: number } => {
  const judged = new Set(
    record.visits
      .filter(({ body }) => body.state === 'found' || body.state === 'nothing')
      .map(({ body }) => body.round),
  );
  const rounds = record.rounds.filter(({ thing }) => judged.has(thing));
  const groups: Round[][] = [];
  for (const round of rounds) {
    const group = groups.find(([first]) => first && comparable(first, round).ok);
    if (group) group.push(round);
    else groups.push([round]);
  }
  const latest = (group: readonly Round[]): string => group.at(-1)?.body.date ?? '';
  const [most = []] = groups.sort((a, b) => b.length - a.length || latest(b).localeCompare(latest(a)));
  return { alike: onePerDay(most), leftOut: rounds.length - most.length };
};

/** Of two rounds of one day, made by two people beside each other, the first in the order of their names stands. */
const onePerDay = (rounds: readonly Round[]): readonly Round[] =>
  rounds.filter(({ body }, i) => rounds.findIndex((other) => other.body.date === body.date) === i);

export const scoredRounds = (record: SculptureRecord, rounds: readonly Round[]): readonly SeriesRound[] =>
  rounds.map((round) => {
    const day = roundDay(record, round.thing);
    const all = zonesAt(record, round.body.date).reduce((sum, zone) => sum + areaOn(zone, round.body.date).m2, 0);
    const seen = day.zones.reduce((sum, { area }) => sum + area.m2, 0);
    return { round, day, seenShare: all > 0 ? seen / all : 0 };
  });
