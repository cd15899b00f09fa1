import { answersOf, type MeasureAtHand, type MeasureOf } from '../../actions';
import { measuredAgain, type Outline, type Size, writeSelector } from '../../engine/photo';
import { AllJudged } from './AllJudged';
import { ChangeMask } from './ChangeMask';
import { CheckMask } from './CheckMask';
import { EditMask } from './EditMask';

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
  const { draft } = hand;
  if (!draft) return null;
  const selector = { type: 'SvgSelector' as const, value: writeSelector(draft.part) };
  const none = { value: 0, low: 0, high: 0, method: 'photo' as const };
  const told = measuredAgain({ selector, working: draft.working, coverage: none }, size);
  return (
    <AllJudged of={of} hand={hand} told={told} refused={undefined} onStop={onStop}>
      <ChangeMask of={of} draft={draft} />
    </AllJudged>
  );
}
