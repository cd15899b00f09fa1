import type { Reason } from '../../engine/record';
import { date, sayReason, w } from '../../words';
import { Button, Notice } from '../parts';
import type { Flat } from './typedFields';
import './typed.css';

const words = w.notKept;

/** What is to be said above the form. */
export type TypedState =
  | { readonly is: 'quiet' }
  | { readonly is: 'back'; readonly at: string }
  | { readonly is: 'discarded'; readonly values: Flat; readonly at: string };

interface TypedLineProps {
  readonly state: TypedState;
  /** Why what is typed is not held. */
  readonly problem: Reason | undefined;
  readonly onDiscard: (at: string) => void;
  readonly onBringBack: (values: Flat, at: string) => void;
}

/** Says above a form that what was typed before is here again, with a way to be rid of it; nothing while there is nothing to say. */
export function TypedLine({ state, problem, onDiscard, onBringBack }: TypedLineProps) {
  return (
    <>
      {problem && (
        <Notice kind="caution" title={words.notHeld}>
          <p>{sayReason(problem)}</p>
        </Notice>
      )}
      {state.is !== 'quiet' && (
        <div className="typed-line not-printed" role="status">
          <p>{state.is === 'back' ? words.back(...typedWhen(state.at)) : words.discarded}</p>
          {state.is === 'back' ? (
            <Button kind="quiet" onClick={() => onDiscard(state.at)}>
              {words.discard}
            </Button>
          ) : (
            <Button kind="quiet" onClick={() => onBringBack(state.values, state.at)}>
              {words.bringBack}
            </Button>
          )}
        </div>
      )}
    </>
  );
}

/** Day and time of a moment, on the clock of the device that noted it. */
export const typedWhen = (at: string): [day: string, time: string] => [date(at.slice(0, 10)), at.slice(11, 16)];
