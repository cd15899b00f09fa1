import { type Coverage, coverageBetween } from '../../engine/record';
import { ladder } from '../../engine/trade';
import { w } from '../../words';
import { Button } from '../parts';
import { usePad } from './PadContext';

const words = w.round.card;

/** An optional second touch on a coverage taken from the ladder: a little less or more, inside the bin of the step. */
export function BetweenSteps({ coverage }: { readonly coverage: Coverage }) {
  const { touch } = usePad();
  const step = ladder.find((s) => s.low === coverage.low && s.high === coverage.high)?.value;
  if (step === undefined || !(coverageBetween(coverage, step, -1) || coverageBetween(coverage, step, 1))) return null;
  const move = (by: -1 | 1) => (
    <Button
      size="round"
      disabled={!coverageBetween(coverage, step, by)}
      onClick={() => touch({ do: 'cover between', step, by })}
    >
      {by < 0 ? words.less : words.more}
    </Button>
  );
  return (
    <fieldset className="finding-parts" aria-label={words.between}>
      {move(-1)}
      {move(1)}
    </fieldset>
  );
}
