import { w } from '../../words';

const words = w.carry;

/** Long work, with how far it is where that is known. */
export function Progress({
  label,
  done,
  all,
}: {
  readonly label: string;
  readonly done?: number;
  readonly all?: number;
}) {
  const known = done !== undefined && all !== undefined && all > 0;
  return (
    <div className="progress" role="status">
      <p>
        {label} {known && <span className="figures">{words.step(done, all)}</span>}
      </p>
      <progress aria-label={label} {...(known ? { value: done, max: all } : {})} />
    </div>
  );
}
