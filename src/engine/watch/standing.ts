import type { Thing } from '../record';
import { evaluateTripwire, type TripwireFacts } from './evaluateTripwire';
import type { Tripwire, TripwireState } from './tripwireState';

/** One tripwire of a decision that holds, where it stands, and what was last said to it. */
export interface TripwireStanding extends TripwireState {
  readonly decision: Thing<'decision'>;
  readonly tripwire: Tripwire;
  /** The latest answer; null where there is none. */
  readonly answer: Thing<'tripwireAnswer'> | null;
  /** It is met, or perhaps met, and nobody has answered what was seen since. */
  readonly open: boolean;
}

const latestAnswer = (
  answers: readonly Thing<'tripwireAnswer'>[],
  decision: string,
  tripwire: string,
): Thing<'tripwireAnswer'> | null =>
  answers
    .filter(({ body }) => body.decision === decision && body.tripwire === tripwire)
    .sort((a, b) => (a.body.on < b.body.on ? -1 : a.body.on > b.body.on ? 1 : a.thing < b.thing ? -1 : 1))
    .at(-1) ?? null;

/**
 * All tripwires of the decisions that hold. An answer speaks for what was known on its day: newer evidence asks again.
 * `factsOf` gives what is known of a work, or of none; undefined while that is being worked out, and the tripwire is left out.
 */
export const tripwiresStanding = (
  decisions: readonly Thing<'decision'>[],
  answers: readonly Thing<'tripwireAnswer'>[],
  factsOf: (sculpture: string | undefined) => TripwireFacts | undefined,
  today: string,
): readonly TripwireStanding[] =>
  decisions
    .filter(({ body }) => body.replacedBy === undefined)
    .flatMap((decision) => {
      const facts = factsOf(decision.body.sculpture);
      if (!facts) return [];
      return decision.body.tripwires.map((tripwire) => {
        const state = evaluateTripwire(tripwire, facts, decision.body.date, today);
        const answer = latestAnswer(answers, decision.thing, tripwire.id);
        const open = state.since !== null && (answer === null || answer.body.on < state.since);
        return { ...state, decision, tripwire, answer, open };
      });
    });
