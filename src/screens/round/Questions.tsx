import type { Coverage, DraftFinding } from '../../engine/record';
import { activities, counts, kindOf, type LadderStep, ladder, origins, severities } from '../../engine/trade';
import { w } from '../../words';
import { CoverageLadder } from '../parts/CoverageLadder';
import { usePad } from './PadContext';
import { saidExtent, yearOf } from './said';
import { Tile, Tiles } from './Tiles';

const words = w.round;

interface OfFinding {
  readonly finding: DraftFinding;
}

export function OriginQuestion({ finding }: OfFinding) {
  const { touch } = usePad();
  return (
    <Tiles label={words.ask.origin(finding.kind)} wide>
      {origins.map(({ id, name, means }) => (
        <Tile
          key={id}
          label={name}
          detail={means}
          pressed={finding.origin === id}
          strong
          onTouch={() => touch({ do: 'origin', origin: id })}
        />
      ))}
    </Tiles>
  );
}

/** The step that holds the value, also where it was set between two. */
const stepOf = (coverage: Coverage | undefined): number | undefined =>
  ladder.find((s) => s.low === coverage?.low && s.high === coverage.high)?.value ?? coverage?.value;

export function ExtentQuestion({ finding }: OfFinding) {
  const { view, touch } = usePad();
  const { letter } = view.zone.body;
  if (finding.measure === 'area') {
    const label = words.ask.extentArea(finding.kind, letter);
    const step = ({ value, low, high }: LadderStep) =>
      touch({ do: 'cover', coverage: { value, low, high, method: 'ladder' } });
    return (
      <div className="pad-group">
        <p className="pad-group-label" aria-hidden="true">
          {label}
        </p>
        <CoverageLadder label={label} chosen={stepOf(finding.coverage)} withoutNone={!finding.earlier} onStep={step} />
      </div>
    );
  }
  const gone = finding.earlier && (
    <Tile label={words.ask.isGone} pressed={finding.gone === true} strong onTouch={() => touch({ do: 'gone' })} />
  );
  if (finding.measure === 'count') {
    return (
      <Tiles label={words.ask.extentCount(finding.kind)}>
        {gone}
        {counts.map(({ id, name, means }) => (
          <Tile
            key={id}
            label={name}
            detail={means}
            pressed={finding.count === id}
            strong
            onTouch={() => touch({ do: 'count', count: id })}
          />
        ))}
      </Tiles>
    );
  }
  return (
    <Tiles label={words.ask.extentThere(finding.kind)}>
      {gone}
      <Tile label={words.ask.there} pressed={finding.there === true} strong onTouch={() => touch({ do: 'there' })} />
    </Tiles>
  );
}

export function SeverityQuestion({ finding }: OfFinding) {
  const { touch } = usePad();
  return (
    <Tiles label={words.ask.severity(finding.kind)} wide>
      {severities.map(({ id, name, means }) => (
        <Tile
          key={id}
          label={name}
          detail={means}
          pressed={finding.severity === id}
          strong
          onTouch={() => touch({ do: 'severity', severity: id })}
        />
      ))}
    </Tiles>
  );
}

export function ActivityQuestion({ finding }: OfFinding) {
  const { touch } = usePad();
  return (
    <Tiles label={words.ask.activity(finding.kind)} wide>
      {activities.map(({ id, name, means }) => (
        <Tile
          key={id}
          label={name}
          detail={means}
          pressed={finding.activity === id}
          strong
          onTouch={() => touch({ do: 'activity', activity: id })}
        />
      ))}
    </Tiles>
  );
}

const answers = ['changed', 'same', 'earlier was wrong'] as const;

/** Only now, with the own value made, does the earlier one show. */
export function AgainstQuestion({ finding }: OfFinding) {
  const { view, touch } = usePad();
  const earlier = finding.earlier;
  if (!earlier) return null;
  const judged = view.draft.before?.date ?? view.round.body.date;
  return (
    <Tiles
      label={`${kindOf(finding.kind)?.name ?? finding.kind}. ${words.ask.against(saidExtent(finding), yearOf(judged), saidExtent(earlier.body))}`}
      wide
    >
      {answers.map((against) => (
        <Tile
          key={against}
          label={words.ask.againstName[against]}
          detail={words.ask.againstWhat[against]}
          strong
          onTouch={() => touch({ do: 'against', against })}
        />
      ))}
      <Tile
        label={words.ask.againstName.again}
        detail={words.ask.againstWhat.again}
        strong
        onTouch={() => touch({ do: 'rate again' })}
      />
    </Tiles>
  );
}
