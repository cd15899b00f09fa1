import { answersOf, keepMeasure, type MeasureAtHand, type MeasureOf } from '../../actions';
import { isRefused, measuredAgain, type Outline, type Size, writeSelector } from '../../engine/photo';
import { w } from '../../words';
import { Button, Notice } from '../parts';
import { say, useDeed, useDesk } from '../shell';
import { ChangeMask } from './ChangeMask';
import { CheckMask } from './CheckMask';
import { EditMask } from './EditMask';
import { SoFar } from './SoFar';

const words = w.measure;

export interface MaskToolProps {
  readonly of: MeasureOf;
  readonly hand: MeasureAtHand;
  readonly part: Outline;
  readonly size: Size;
  readonly urls: { readonly whole: string; readonly thumb: string };
  readonly alt: string;
  readonly onStop: () => void;
}

/** Spots tapped, a mask looked at and put right with the brush, then check dots: only these make it a figure. */
export function MaskTool(props: MaskToolProps) {
  const { hand } = props;
  const working = hand.draft?.working;
  if (!working || working.inMask === undefined) return <EditMask {...props} />;
  if (answersOf(working).includes('-')) return <CheckMask {...props} working={working} />;
  return <MaskDone {...props} />;
}

function MaskDone({ of, hand, size, onStop }: MaskToolProps) {
  const desk = useDesk();
  const { run, refused } = useDeed();
  const { draft } = hand;
  if (!draft) return null;
  const selector = { type: 'SvgSelector' as const, value: writeSelector(draft.part) };
  const none = { value: 0, low: 0, high: 0, method: 'photo' as const };
  const told = measuredAgain({ selector, working: draft.working, coverage: none }, size);
  const kept = hand.measure !== null && !hand.differs;
  return (
    <section className="stack" aria-label={words.allJudged}>
      {refused && <Notice kind="problem" title={refused} />}
      <p className="strong">
        {words.allJudged}. {kept && words.kept}
      </p>
      <SoFar told={told} title={words.wayShort.photo} />
      <div className="row by-hand">
        <ChangeMask of={of} draft={draft} />
        {!kept && !isRefused(told) && (
          <Button
            size="round"
            onClick={() =>
              void run(
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
