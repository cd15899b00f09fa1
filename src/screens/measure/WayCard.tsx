import { useId } from 'react';
import { answersOf, type MeasureOf, measureAtHand } from '../../actions';
import { fromTo, share, w } from '../../words';
import { Button } from '../parts';
import { useDesk, useQuestion } from '../shell';
import type { ShareRow } from './sharesOf';

const words = w.measure;

interface WayCardProps {
  readonly of: MeasureOf;
  readonly row: ShareRow | undefined;
  readonly disabled: boolean;
  readonly onOpen: () => void;
}

/** One way of measuring: what it is good for, how far it is, and the figure it gave. */
export function WayCard({ of, row, disabled, onOpen }: WayCardProps) {
  const id = useId();
  const hand = useQuestion(measureAtHand(useDesk(), of));
  const { way } = of;
  const begun = hand?.draft && (hand.measure === null || hand.differs);
  const answers = hand?.draft ? answersOf(hand.draft.working) : '';
  const done = answers.length - answers.split('-').length + 1;
  return (
    <section className="card stack tight way-card" aria-labelledby={id}>
      <h3 id={id}>{words.way[way]}</h3>
      <p className="soft">{words.wayWhat[way]}</p>
      {row && (
        <p className="figures">
          <span className="figure-large">{share(row.value)}</span>{' '}
          <span className="soft">({fromTo(share(row.low), share(row.high))})</span>
        </p>
      )}
      {begun && (
        <p className="strong">
          {hand.differs ? words.changed : words.underWay} {answers.length > 0 && words.dotsDone(done, answers.length)}
        </p>
      )}
      <div className="row by-hand">
        <Button size="round" kind={begun ? 'main' : 'plain'} disabled={disabled} onClick={onOpen}>
          {begun ? words.goOn[way] : row ? words.lookAgain[way] : words.open[way]}
        </Button>
      </div>
    </section>
  );
}
