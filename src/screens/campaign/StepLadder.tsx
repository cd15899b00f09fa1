import type { StepStanding } from '../../engine/campaign';
import { type NameOfThing, w } from '../../words';
import { Reasons } from '../parts/Reasons';

const words = w.campaign.overview;

interface StepLadderProps {
  readonly steps: readonly StepStanding[];
  readonly names: NameOfThing;
}

/** All steps in their order. The mark says by its shape what the word says beside it. */
export function StepLadder({ steps, names }: StepLadderProps) {
  return (
    <ol className="bare step-ladder">
      {steps.map(({ step, state, there, lacks }) => (
        <li
          key={step.id}
          className={state === 'now' ? 'now' : undefined}
          aria-current={state === 'now' ? 'step' : undefined}
        >
          <Mark state={state} />
          <div className="grow">
            <p>
              <span className={state === 'ahead' ? undefined : 'strong'}>{step.name}</span>{' '}
              <span className="soft small">
                {state === 'done' && there.length === 0 ? words.byWord : words.states[state]}
              </span>
            </p>
            {state !== 'ahead' && <Reasons reasons={[...there, ...lacks]} nameOf={names} />}
          </div>
        </li>
      ))}
    </ol>
  );
}

/** Filled: done. Half: left open. Ring with a dot: now. Empty ring: ahead. */
function Mark({ state }: { readonly state: StepStanding['state'] }) {
  return (
    <svg width="22" height="22" viewBox="0 0 22 22" aria-hidden="true" className="step-mark">
      <circle cx="11" cy="11" r="8.5" className={state === 'done' ? 'filled' : 'ring'} />
      {state === 'left open' && <path d="M11 2.5a8.5 8.5 0 000 17z" className="filled" />}
      {state === 'now' && <circle cx="11" cy="11" r="4" className="filled" />}
    </svg>
  );
}
