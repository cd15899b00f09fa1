import type { BodyOf, Reason } from '../record';
import { beadings, kindOf, type Level, originOf } from '../trade';
import { highest, isActive, isStrong, type Proposal, present } from './conditionClass';
import { constants } from './constants';
import type { FindingScore } from './findingLoss';
import { because } from './reasonCodes';
import type { ZoneScore } from './zoneIndex';

/** What sort of thing is to be done. RC3 is never proposed: `askConservator` says why to ask whether major treatment is due. */
export interface Recommendation extends Proposal {
  readonly askConservator: readonly Reason[];
}

interface Candidate {
  readonly level: Level;
  readonly reason: Reason;
}

const byFinding = (score: FindingScore): readonly Candidate[] => {
  const { kind, origin } = score.finding;
  const row = kindOf(kind);
  if (!row) return [];
  // A stop word is not washed to see whether it is dirt.
  if (row.stop !== 'always' && originOf(origin).hazard !== 'kind')
    return [{ level: 1, reason: because('class: wash and look again', { kind }) }];
  const severe = score.finding.severity === 'severe' && isActive(score);
  return [
    {
      level: row.recommends,
      reason: because(row.recommends === 2 ? 'class: kind asks for test or repair' : 'class: kind asks for care', {
        kind,
      }),
    },
    ...(severe
      ? [
          {
            level: constants.severeRecommendation.value as Level,
            reason: because('class: severe and active', { kind }),
          },
        ]
      : []),
  ];
};

/** Recommendation class of a zone, 0 to 2. */
export const recommendationOf = (zone: ZoneScore, beading: BodyOf<'visit'>['beading']): Recommendation => {
  const spray = beadings.find(({ id }) => id === beading);
  const candidates: readonly Candidate[] = [
    ...present(zone).flatMap(byFinding),
    ...(spray && spray.proposes > 0
      ? [{ level: spray.proposes as Level, reason: because('class: beading', { beading: spray.id }) }]
      : []),
  ];
  return {
    ...highest(candidates, because('class: nothing to do')),
    askConservator: isStrong(zone)
      ? [because('class: ask whether major treatment is due', { why: 'zone', value: zone.value })]
      : [],
  };
};
