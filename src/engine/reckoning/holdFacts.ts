import type { ClassOptions } from '../condition';
import type { Advice, ZoneHolds } from '../hold';

/** What holds say to the urgency of a zone. A zone of which too little is known is left out. */
export const holdFacts = (
  holds: readonly ZoneHolds[],
  advice: readonly Advice[],
): Required<Pick<ClassOptions, 'holdShorter' | 'pastHold'>> => ({
  holdShorter: new Map(
    holds
      .filter(({ shortening }) => shortening.word !== 'too few')
      .map(({ zone, shortening }) => [zone, shortening.word === 'getting shorter']),
  ),
  pastHold: new Map(
    advice.filter(({ expected, past }) => expected !== null || past).map(({ zone, past }) => [zone, past]),
  ),
});
