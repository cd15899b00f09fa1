import { type DotList, judgeDot, takeBackDot, type Working } from '../../actions';
import { aspectOf, isRefused, outlineArea, type Point } from '../../engine/photo';
import { w } from '../../words';
import { Notice } from '../parts';
import { Reasons } from '../parts/Reasons';
import { PixelsUnderWay, say, useDeed, useDesk } from '../shell';
import { ChangeMask } from './ChangeMask';
import { type Dot, DotJudge } from './DotJudge';
import type { MaskToolProps } from './MaskTool';
import { touchesOf } from './maskTouches';
import { isGreen, subjectOf } from './subject';
import { useMask } from './useMask';

const words = w.measure;

interface CheckDot extends Dot {
  readonly list: DotList;
  readonly index: number;
}

/** From the top down, whether in the mask or outside: who judges is not told which, and does not see the mask. */
const inOneRow = (working: Working, inMask: readonly Point[], outsideMask: readonly Point[]): CheckDot[] => {
  const row = (list: 'inMask' | 'outsideMask', points: readonly Point[]): CheckDot[] =>
    points.map((at, index) => ({ at, list, index, answer: working[list]?.charAt(index) || '-' }));
  return [...row('inMask', inMask), ...row('outsideMask', outsideMask)].sort(
    (a, b) => a.at[1] - b.at[1] || a.at[0] - b.at[0],
  );
};

/** Check dots judged one by one, as all dots are. What they say of the mask makes the figure and its range. */
export function CheckMask({
  of,
  hand,
  part,
  size,
  urls,
  onStop,
  working,
}: MaskToolProps & { readonly working: Working }) {
  const desk = useDesk();
  const { run, refused } = useDeed();
  const { draft } = hand;
  const inPart = draft?.part ?? part;
  const { seen } = useMask(of.photo, inPart, touchesOf(working), working.seed ?? 0);
  if (!draft || !seen) return <PixelsUnderWay says={words.maskWaits} />;
  if (isRefused(seen) || seen.inMask.length !== working.inMask?.length)
    return (
      <div className="stack">
        <Notice kind="caution" title={words.maskOther}>
          {isRefused(seen) ? <Reasons reasons={seen.refused} /> : <p>{words.maskOtherWhat}</p>}
        </Notice>
        <div className="row by-hand">
          <ChangeMask of={of} draft={draft} />
        </div>
      </div>
    );
  const dots = inOneRow(working, seen.inMask, seen.outsideMask);
  return (
    <>
      {refused && <Notice kind="problem" title={refused} />}
      <DotJudge
        urls={urls}
        size={size}
        part={inPart}
        dots={dots}
        spacing={Math.sqrt((outlineArea(inPart) * aspectOf(size)) / Math.max(1, dots.length))}
        green={isGreen(of.kind)}
        what={subjectOf(of.kind)}
        check
        onAnswer={(dot, answer) => {
          const { list, index } = dots[dot] as CheckDot;
          void run(
            () => judgeDot(desk, of, list, index, answer),
            ({ kept }) => kept && say(words.kept),
          );
        }}
        onBack={(dot) => {
          const { list, index } = dots[dot] as CheckDot;
          void run(() => takeBackDot(desk, of, list, index));
        }}
        onStop={onStop}
      />
      <div className="row by-hand">
        <ChangeMask of={of} draft={draft} />
      </div>
    </>
  );
}
