import { share, w } from '../../words';
import { Button } from './Button';
import './progress.css';

interface ProgressProps {
  readonly label: string;
  readonly done?: number | undefined;
  readonly all?: number | undefined;
  /** Where it can be left off without harm. */
  readonly onCancel?: (() => void) | undefined;
}

/** Long work: how far it is, where that is known, and a way to leave off. */
export function Progress({ label, done, all, onCancel }: ProgressProps) {
  const known = done !== undefined && all !== undefined && all > 0;
  return (
    <div className="progress-row row not-printed">
      <div className="grow stack tight">
        <p>
          <span role="status">{label}</span> {known && <span className="figures">{share(done / all)}</span>}
        </p>
        <progress aria-label={label} {...(known ? { value: done, max: all } : {})} />
      </div>
      {onCancel && <Button onClick={onCancel}>{w.parts.leaveOff}</Button>}
    </div>
  );
}
