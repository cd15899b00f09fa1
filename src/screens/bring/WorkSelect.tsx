import type { WorkHere } from '../../engine/bring';
import { w, workName } from '../../words';
import { Select } from '../parts/Select';

const words = w.bring;

interface WorkSelectProps {
  readonly works: readonly WorkHere[];
  readonly label: string;
  readonly value: string;
  readonly onChange: (work: string) => void;
}

/** One of the works, by number and title; none is chosen beforehand. */
export function WorkSelect({ works, label, value, onChange }: WorkSelectProps) {
  const options = works.map(({ thing, number, title }) => ({
    value: thing,
    label: workName({ body: { number, title } }),
  }));
  return (
    <Select
      label={label}
      value={value}
      onChange={onChange}
      options={[{ value: '', label: words.chooseWork }, ...options]}
    />
  );
}
