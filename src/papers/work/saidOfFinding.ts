import { coverageInterval } from '../../engine/condition';
import type { BodyOf } from '../../engine/record';
import { activityOf, kindOf, severityOf } from '../../engine/trade';
import { midSentence, share, w } from '../../words';
import { originSaid } from './kindAndOrigin';

const words = w.paperCondition;

/** A finding as a sentence: what, from where, how much of the zone, how strong, whether it seems to go on. */
export const saidOfFinding = (body: BodyOf<'finding'>): string => {
  const { kind, cleared, carriedFrom, coverage, count, severity, activity } = body;
  const range = coverage && coverageInterval(coverage);
  return words.finding(
    [
      kindOf(kind)?.name ?? kind,
      originSaid(body),
      cleared && words.cleared,
      carriedFrom && words.carried,
      coverage && range && words.cover(share(coverage.value), share(range.low), share(range.high)),
      count && words.count[count],
      !cleared && midSentence(severityOf(severity).name),
      !cleared && midSentence(activityOf(activity).name),
    ].filter((part) => typeof part === 'string' && part !== '') as string[],
  );
};
