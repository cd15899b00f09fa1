import { memo } from 'react';
import { coveragePatch, patchHeight, patchWidth } from '../../engine/photo';
import { type LadderStep, ladder } from '../../engine/trade';
import './coverage.css';

interface CoverageLadderProps {
  /** What is being judged; read out before the steps. */
  readonly label: string;
  /** Value of the step already chosen, 0 to 1. */
  readonly chosen?: number | undefined;
  /** Leaves out "none there": nothing is begun in order to say that it is not there. */
  readonly withoutNone?: boolean;
  readonly onStep: (step: LadderStep) => void;
}

/** Twelve steps, each beside a patch that truly covers what it says. One touch chooses. */
export const CoverageLadder = memo(function CoverageLadder({
  label,
  chosen,
  withoutNone,
  onStep,
}: CoverageLadderProps) {
  const steps = withoutNone ? ladder.filter((step) => step.value > 0) : ladder;
  return (
    <fieldset className="ladder" aria-label={label}>
      {steps.map((step) => (
        <button
          key={step.id}
          type="button"
          className="ladder-step"
          aria-label={step.value === 0 ? `${step.label} %, ${step.name}` : step.name}
          aria-pressed={chosen === step.value}
          onClick={() => onStep(step)}
        >
          <Patch share={step.value} />
          <span className="ladder-label figures">
            {step.label}
            <span className="ladder-unit"> %</span>
          </span>
        </button>
      ))}
    </fieldset>
  );
});

const Patch = memo(function Patch({ share }: { readonly share: number }) {
  return (
    <svg className="patch" viewBox={`0 0 ${patchWidth} ${patchHeight}`} aria-hidden="true" focusable="false">
      <rect className="patch-ground" width={patchWidth} height={patchHeight} />
      <path className="patch-pale" fillRule="evenodd" d={coveragePatch(share).path} />
    </svg>
  );
});
