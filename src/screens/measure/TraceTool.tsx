import { keepMeasure, keepTouches, type MeasureAtHand, type MeasureDraft, type MeasureOf } from '../../actions';
import { isRefused, type Outline, readSelector, type Size, tracedCoverage, writeSelector } from '../../engine/photo';
import { w } from '../../words';
import { Button, Notice } from '../parts';
import { say, useDeed, useDesk } from '../shell';
import { CornersTool } from './CornersTool';
import type { Drawing } from './drawing';
import { SoFar } from './SoFar';
import { subjectOf } from './subject';

const words = w.measure;

interface TraceToolProps {
  readonly of: MeasureOf;
  readonly hand: MeasureAtHand;
  readonly part: Outline;
  readonly size: Size;
  readonly url: string | null | undefined;
  readonly alt: string;
  readonly onStop: () => void;
}

const drawingOf = (draft: MeasureDraft | null): Drawing => ({
  rings: readSelector(draft?.working.patches?.value ?? '') ?? [],
  corners: draft?.corners ?? [],
});

/** Patches of a finding traced by taps. They make a figure when the person says that this is all of it. */
export function TraceTool({ of, hand, part, size, url, alt, onStop }: TraceToolProps) {
  const desk = useDesk();
  const { run, refused, busy } = useDeed();
  const touched = (touch: (before: Drawing) => Drawing) =>
    keepTouches(desk, of, (draft) => {
      const { rings, corners } = touch(drawingOf(draft));
      const patches = { type: 'SvgSelector' as const, value: writeSelector(rings) };
      return { part: draft?.part ?? part, working: { patches }, corners };
    });
  const now = drawingOf(hand.draft);
  const told = tracedCoverage(now.rings, part, size);
  const what = subjectOf(of.kind);
  const open = now.corners.length > 0;
  const finish = () =>
    void run(
      async () => {
        // Nothing touched at all is a drawing too: there is none of it here.
        const outcome = await touched((drawing) => drawing);
        return outcome.ok ? keepMeasure(desk, of) : outcome;
      },
      () => {
        say(words.kept);
        onStop();
      },
    );
  return (
    <>
      <p className="page-lead">{words.traceLead(what)}</p>
      {refused && <Notice kind="problem" title={refused} />}
      <CornersTool
        url={url}
        alt={alt}
        size={size}
        of="patch"
        drawing={now}
        onChange={(touch) => void run(() => touched(touch))}
        part={part}
      >
        {(now.rings.length > 0 || isRefused(told)) && <SoFar told={told} />}
        {open && <p className="soft small">{words.traceOpen}</p>}
        <div className="row by-hand measure-ends">
          <Button size="round" onClick={onStop}>
            {words.stop}
          </Button>
          <Button size="round" kind="main" disabled={busy || open || isRefused(told)} onClick={finish}>
            {now.rings.length === 0 ? words.traceNone(what) : words.traceAll}
          </Button>
        </div>
      </CornersTool>
    </>
  );
}
