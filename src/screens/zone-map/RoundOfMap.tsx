import type { SculptureRecord } from '../../engine/record';
import { roundName, w } from '../../words';
import { Select } from '../parts/Select';

interface RoundOfMapProps {
  readonly record: SculptureRecord;
  readonly round: string;
  readonly onChoose: (round: string) => void;
}

/** Which round the map tells of. Nothing where there is one only. */
export function RoundOfMap({ record, round, onChoose }: RoundOfMapProps) {
  const visited = new Set(record.visits.map(({ body }) => body.round));
  const rounds = record.rounds.filter(({ thing }) => visited.has(thing)).reverse();
  if (rounds.length < 2) return null;
  return (
    <div className="not-printed">
      <Select
        label={w.zoneMap.round}
        value={round}
        onChange={onChoose}
        options={rounds.map((one) => ({ value: one.thing, label: roundName(one) }))}
      />
    </div>
  );
}
