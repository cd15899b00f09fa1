import { expectLookPhoto, type LookSaid } from '../../actions';
import type { Thing } from '../../engine/record';
import { w } from '../../words';
import { PhotoTake } from '../parts/PhotoTake';
import { useDesk } from '../shell';
import './look.css';

const words = w.look;

interface LookRowProps {
  readonly zone: Thing<'zone'>;
  /** Today's look, where there is one. */
  readonly today: Thing<'look'> | undefined;
  /** Under the name: what was seen last, or why it is on the list. */
  readonly lines: readonly string[];
  readonly answer: (result: LookSaid['result']) => void;
  readonly keep: (look: string, file: File) => void;
}

const results = ['clear', 'green', 'unsure'] as const;

/** One zone of a look: three answers, and a photo where the green is back. */
export function LookRow({ zone, today, lines, answer, keep }: LookRowProps) {
  const desk = useDesk();
  const { letter, name } = zone.body;
  const photos = today?.body.photos?.length ?? 0;
  return (
    <li className="look-zone">
      <p className="look-name">
        <span className="look-letter">{letter}</span>
        <span>
          <span className="strong">{name}</span>
          {lines.map((line) => (
            <span key={line} className="look-line">
              {line}
            </span>
          ))}
          {photos > 0 && <span className="look-line">{words.photoCount(photos)}</span>}
        </span>
      </p>
      <div className="look-answers">
        {results.map((result) => (
          <button
            key={result}
            type="button"
            className="look-answer"
            aria-label={words.answerFor(words[result], letter)}
            aria-pressed={today?.body.result === result}
            onClick={() => answer(result)}
          >
            {words[result]}
          </button>
        ))}
      </div>
      {today && today.body.result !== 'clear' && photos === 0 && (
        <div className="stack tight">
          <p>{words.photoWhat}</p>
          <div className="row">
            <PhotoTake
              what={w.round.zone.title(letter, name)}
              expect={() => expectLookPhoto(desk, today.thing).then(() => true)}
              keep={(file) => keep(today.thing, file)}
            />
          </div>
        </div>
      )}
    </li>
  );
}
