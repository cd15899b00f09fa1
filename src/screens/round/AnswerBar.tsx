import { isJudged } from '../../engine/record';
import { w } from '../../words';
import { usePad } from './PadContext';
import { asLastYear } from './said';
import { Tile } from './Tiles';

const words = w.round;

/** What the pad itself is asking about: going on comes with the answer. Any other reason is said when going on is tried. */
const askedOnPad = new Set(['round: earlier finding not answered', 'round: finding not finished']);

/** The three answers of one touch, always there, and the way on once something is said. */
export function AnswerBar({ onPass }: { readonly onPass: () => void }) {
  const { view, touch, leave } = usePad();
  const { draft, notNext, next, round } = view;
  const { before } = draft;
  const held = draft.findings.some((f) => f.earlier);
  const onward = next ? words.zone.nextTo(next.body.letter) : words.zone.nextEnd;
  const untouched = draft.touches === 0 && draft.already !== undefined;
  const said = draft.findings.some(isJudged);
  const nothing = () => (held && draft.panel !== 'gone' ? touch({ do: 'nothing' }) : leave({ how: 'nothing' }));
  return (
    <div className="answer-bar">
      <fieldset className="answers" aria-label={words.zone.answers}>
        {before && (
          <Tile
            label={asLastYear(before, round.body.date)}
            detail={words.zone.asLastYearWhat}
            shortDetail={words.zone.carried}
            strong
            onTouch={() => leave({ how: 'as last year' })}
          />
        )}
        <Tile label={words.zone.nothing} detail={words.zone.nothingWhat} shortDetail="" strong onTouch={nothing} />
        <Tile
          label={words.zone.notReached}
          detail={words.zone.notReachedWhat}
          shortDetail=""
          pressed={draft.panel === 'why'}
          strong
          onTouch={() => touch(draft.panel === 'why' ? { do: 'close' } : { do: 'could not reach' })}
        />
      </fieldset>
      {(untouched || (said && !(notNext && askedOnPad.has(notNext.code)))) && (
        <button type="button" className="next-zone" onClick={untouched ? onPass : () => leave({ how: 'next' })}>
          {onward}
        </button>
      )}
    </div>
  );
}
