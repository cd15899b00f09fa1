import { classesOf, type RoundClasses, type SculptureScore, scoreRound, type ZoneScore } from '../../engine/condition';
import type { WorkOnPaper } from '../../engine/reckoning';
import { latestRound, type SculptureRecord, type Thing, zonesAt } from '../../engine/record';

/** The round a paper tells of, scored and classed. */
export interface LatestOnPaper {
  readonly record: SculptureRecord;
  readonly round: Thing<'round'>;
  readonly score: SculptureScore;
  readonly classes: RoundClasses;
  /** Zones that lived on its day, in walking order. */
  readonly zones: readonly Thing<'zone'>[];
  readonly scoreOf: (zone: string) => ZoneScore | undefined;
}

/** Undefined where nobody has looked yet. Figures already worked out are taken; where they are still to come they are made here. */
export const latestOnPaper = ({ record, figures }: WorkOnPaper): LatestOnPaper | undefined => {
  const round = latestRound(record);
  if (!round) return undefined;
  const need = figures?.need?.score.round === round.thing ? figures.need : undefined;
  const score = need?.score ?? scoreRound(record, round.thing);
  const classes = need?.classes ?? classesOf(record, round.thing, { score });
  const scores = new Map(score.zones.map((zone) => [zone.zone, zone]));
  return {
    ...{ record, round, score, classes },
    zones: zonesAt(record, round.body.date),
    scoreOf: (zone) => scores.get(zone),
  };
};
