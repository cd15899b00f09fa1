import { keepTouches, type MeasureAtHand, type MeasureOf, measureAtHand } from '../../actions';
import { type Outline, type Size, writeSelector } from '../../engine/photo';
import { w } from '../../words';
import { Button, Notice, Reading } from '../parts';
import { useDeed, useDesk, useQuestion } from '../shell';
import { DotsTool } from './DotsTool';
import { MaskTool } from './MaskTool';
import { TraceTool } from './TraceTool';

const words = w.measure;

interface ToolScreenProps {
  readonly of: MeasureOf;
  readonly part: Outline;
  readonly size: Size;
  readonly urls: { readonly whole: string; readonly thumb: string };
  readonly alt: string;
  /** Width of the largest patch traced here, share of the photo's width; 0 where none was. */
  readonly largestPatch: number;
  readonly onStop: () => void;
}

/** The tool of one way, with the touches made so far. */
export function ToolScreen(props: ToolScreenProps) {
  const hand = useQuestion(measureAtHand(useDesk(), props.of));
  if (!hand) return <Reading />;
  return <Tool {...props} hand={hand} />;
}

function Tool({
  of,
  part,
  size,
  urls,
  alt,
  largestPatch,
  onStop,
  hand,
}: ToolScreenProps & { readonly hand: MeasureAtHand }) {
  const { draft } = hand;
  const changed = draft !== null && writeSelector(draft.part) !== writeSelector(part);
  if (of.way === 'dots')
    return (
      <>
        {changed && (
          <Notice title={words.partChanged}>
            <p>{words.partChangedWhat}</p>
          </Notice>
        )}
        <DotsTool of={of} hand={hand} part={part} size={size} urls={urls} largestPatch={largestPatch} onStop={onStop} />
      </>
    );
  if (of.way === 'photo')
    return (
      <>
        {changed && draft && <TakePart of={of} draft={draft} part={part} />}
        <MaskTool
          key={writeSelector(draft?.part ?? part)}
          of={of}
          hand={hand}
          part={part}
          size={size}
          urls={urls}
          alt={alt}
          onStop={onStop}
        />
      </>
    );
  const traced = draft?.part ?? part;
  return (
    <>
      {changed && draft && <TakePart of={of} draft={draft} part={part} />}
      <TraceTool
        key={writeSelector(traced)}
        of={of}
        hand={hand}
        part={traced}
        size={size}
        url={urls.whole}
        alt={alt}
        onStop={onStop}
      />
    </>
  );
}

interface TakePartProps {
  readonly of: MeasureOf;
  readonly draft: NonNullable<MeasureAtHand['draft']>;
  readonly part: Outline;
}

/** Patches lie where they lie: they can go over to the part as it is now. */
function TakePart({ of, draft, part }: TakePartProps) {
  const desk = useDesk();
  const { run, refused } = useDeed();
  // Check dots were laid in the part as it was; patches, spots and strokes lie where they lie.
  const { maskShare: _s, leftOut: _l, inMask: _i, outsideMask: _o, ...working } = draft.working;
  return (
    <Notice
      title={words.partChanged}
      actions={
        <Button onClick={() => void run(() => keepTouches(desk, of, { ...draft, working, part }))}>
          {words.partTake}
        </Button>
      }
    >
      <p>{refused ?? words.partChangedWhat}</p>
    </Notice>
  );
}
