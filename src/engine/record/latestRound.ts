import type { Thing } from './current';
import type { SculptureRecord } from './sculptureRecord';

/** Rounds after an incident see a few zones only: they speak for the whole where there is no other. */
const speaksForAll = (round: Thing<'round'>): boolean => round.body.type !== 'incident';

/** The round a work is known by: the last finished one; where none is finished, the last one with a visit. */
export const latestRound = (record: SculptureRecord): Thing<'round'> | undefined => {
  const visited = new Set(record.visits.map((v) => v.body.round));
  const rounds = record.rounds.filter((r) => visited.has(r.thing));
  const ended = rounds.filter((r) => r.body.ended !== undefined);
  return ended.filter(speaksForAll).at(-1) ?? ended.at(-1) ?? rounds.at(-1);
};
