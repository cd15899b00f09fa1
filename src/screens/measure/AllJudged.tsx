import type { ReactNode } from 'react';
import { keepMeasure, type MeasureAtHand, type MeasureOf } from '../../actions';
import { isRefused, type Measurement } from '../../engine/photo';
import { w } from '../../words';
import { Button, Notice } from '../parts';
import { say, useDeed, useDesk } from '../shell';
import { SoFar } from './SoFar';

const words = w.measure;

interface AllJudgedProps {
  readonly of: MeasureOf;
  readonly hand: MeasureAtHand;
  readonly told: Measurement;
  /** Why a touch of the caller's own was refused. */
  readonly refused: string | undefined;
  readonly onStop: () => void;
  /** What can be judged or made again. */
  readonly children: ReactNode;
}

/** Every dot is judged: what they come to, and the figure kept where it is not yet. */
export function AllJudged({ of, hand, told, refused, onStop, children }: AllJudgedProps) {
  const desk = useDesk();
  const keeping = useDeed();
  const why = refused ?? keeping.refused;
  const kept = hand.measure !== null && !hand.differs;
  return (
    <section className="stack" aria-label={words.allJudged}>
      {why && <Notice kind="problem" title={why} />}
      <p className="strong">
        {words.allJudged}. {kept && words.kept}
      </p>
      <SoFar told={told} title={words.wayShort[of.way]} />
      <div className="row by-hand">
        {children}
        {!kept && !isRefused(told) && (
          <Button
            size="round"
            onClick={() =>
              void keeping.run(
                () => keepMeasure(desk, of),
                () => say(words.kept),
              )
            }
          >
            {words.keep}
          </Button>
        )}
        <Button size="round" kind="main" onClick={onStop}>
          {words.back}
        </Button>
      </div>
    </section>
  );
}
