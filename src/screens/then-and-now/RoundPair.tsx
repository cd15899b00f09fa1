import type { Thing } from '../../engine/record';
import { roundNameInFull, w } from '../../words';
import { Select } from '../parts/Select';

const words = w.thenAndNow;

interface RoundPairProps {
  readonly rounds: readonly Thing<'round'>[];
  readonly then: string;
  readonly now: string;
  readonly onThen: (round: string) => void;
  readonly onNow: (round: string) => void;
}

/** Which two rounds are held against each other; any two may be chosen. */
export function RoundPair({ rounds, then, now, onThen, onNow }: RoundPairProps) {
  const options = [...rounds].reverse().map((round) => ({ value: round.thing, label: roundNameInFull(round) }));
  return (
    <div className="fields round-pair">
      <Select label={words.chooseThen} value={then} onChange={onThen} options={options} />
      <Select label={words.chooseNow} value={now} onChange={onNow} options={options} />
    </div>
  );
}
