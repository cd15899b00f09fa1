import { isByEye } from '../condition';
import type { KnownEye, Reason, SculptureRecord, Thing } from '../record';
import { because } from './reasonCodes';

type Round = Thing<'round'>;

/** Spread of the eye that looked in a round, on the logit; undefined until it is known. */
export const eyeIn = (record: SculptureRecord, round: Round): number | undefined =>
  record.eyes[round.body.surveyor]?.sd;

/** Whose own spread was used, each person once: only for rounds with a coverage judged by eye. */
export const eyeReasons = (record: SculptureRecord, rounds: readonly Round[]): Reason[] => {
  const looked = rounds.filter(({ thing }) =>
    record.findings.some(({ body }) => body.round === thing && body.coverage && isByEye(body.coverage)),
  );
  return [...new Set(looked.map(({ body }) => body.surveyor))].flatMap((surveyor) => {
    const eye: KnownEye | undefined = record.eyes[surveyor];
    return eye
      ? [because('change: own eye', { surveyor, sd: eye.sd, pairs: eye.pairs, patches: eye.patches ?? 0 })]
      : [];
  });
};
