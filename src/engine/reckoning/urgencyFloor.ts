import { type ClassOptions, classesOf, type SculptureScore } from '../condition';
import type { SculptureRecord } from '../record';

/**
 * The urgency class of each zone that holds whatever its index and its coverages are: the rule asked of the same findings with an
 * index of 100 and no coverage told. What is redrawn within its error can only add to it.
 */
export const urgencyFloorOf = (
  record: SculptureRecord,
  round: string,
  options: ClassOptions & { readonly score: SculptureScore },
): ReadonlyMap<string, number> => {
  const zones = options.score.zones.map((zone) => ({
    ...zone,
    value: 100,
    findings: zone.findings.map((finding) => ({ ...finding, cover: null })),
  }));
  const classes = classesOf(record, round, { ...options, score: { ...options.score, zones } });
  return new Map(classes.zones.flatMap(({ about, urgency }) => (urgency.level ? [[about, urgency.level]] : [])));
};
