import type { Thing } from '../../engine/record';
import type { Tripwire, TripwireStanding } from '../../engine/watch';
import { date, type NameOfThing, tripwireText, w } from '../../words';
import { Button } from '../parts';
import { Reasons } from '../parts/Reasons';

const words = w.decisions;

interface WireLineProps {
  readonly wire: Tripwire;
  /** Where it stands; undefined while that is worked out. */
  readonly row: TripwireStanding | undefined;
  readonly watched: boolean;
  readonly answers: readonly Thing<'tripwireAnswer'>[];
  readonly names: NameOfThing;
  readonly onAnswer: ((row: TripwireStanding) => void) | undefined;
}

/** One tripwire: what it says, where it stands and why, and what was said to it so far. */
export function WireLine({ wire, row, watched, answers, names, onAnswer }: WireLineProps) {
  const text = tripwireText(wire, names);
  return (
    <li className={row?.open ? 'wire open' : 'wire'}>
      <p>
        <span className="strong">{text}</span>{' '}
        {watched &&
          (row ? (
            <span className="chip">{words.wireWord[row.word]}</span>
          ) : (
            <span className="soft small">{words.workingOut}</span>
          ))}
      </p>
      {watched && row && <Reasons reasons={row.reasons} nameOf={names} label={words.why} />}
      {answers.length > 0 && (
        <ul className="bare small soft">
          {answers
            .map(({ body }) => body)
            .sort((a, b) => (a.on < b.on ? -1 : 1))
            .map(({ on, answer, by, why }) => (
              <li key={on}>
                {words.answered(date(on), words.answers[answer], by)}
                {why && `. ${why}`}
              </li>
            ))}
        </ul>
      )}
      {row?.open && onAnswer && (
        <div className="row not-printed">
          <Button kind="main" onClick={() => onAnswer(row)} aria-label={words.answerTo(text)}>
            {words.answer}
          </Button>
        </div>
      )}
    </li>
  );
}
