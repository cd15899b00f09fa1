import { type ReactNode, useState } from 'react';
import { aspectOf, type Outline, type Size } from '../../engine/photo';
import { w } from '../../words';
import { Button, NudgePad, PhotoStage } from '../parts';
import { cannotClose, closed, type Drawing, moved, withCorner, withoutLast, withoutRing } from './drawing';
import { CornerMarks, OutlineMarks } from './Marks';

const words = w.measure;

interface CornersToolProps {
  readonly url: string | null | undefined;
  readonly alt: string;
  readonly size: Size;
  /** What the pieces are: patches of a finding, or pieces of the part that is measured. */
  readonly of: 'patch' | 'piece';
  readonly drawing: Drawing;
  /** From what was touched before, which may not be shown yet. */
  readonly onChange: (change: (before: Drawing) => Drawing) => void;
  /** Shown under what is drawn: where the measured part lies. */
  readonly part?: Outline;
  /** Said and done when the drawing is whole. */
  readonly children: ReactNode;
}

/** Pieces drawn by taps: corner by corner, closed by a button, the last corner taken back, any open corner moved by arrows. */
export function CornersTool({ url, alt, size, of, drawing, onChange, part, children }: CornersToolProps) {
  const { rings, corners } = drawing;
  const [chosen, setChosen] = useState<number>();
  const which = Math.min(chosen ?? corners.length - 1, corners.length - 1);
  const stopped = cannotClose(drawing);
  const change = (next: (before: Drawing) => Drawing) => {
    setChosen(undefined);
    onChange(next);
  };
  return (
    <div className="measure-tool">
      <PhotoStage
        url={url}
        alt={alt}
        size={size}
        touchDoes={words.corner}
        onTouch={(at) => change((before) => withCorner(before, at))}
      >
        {part && <OutlineMarks outline={part} size={size} as="part" />}
        <OutlineMarks outline={rings} size={size} as={of} />
        <CornerMarks corners={corners} chosen={which} size={size} />
      </PhotoStage>
      <div className="measure-pad stack">
        <p role="status">
          {words.rings[of](rings.length)} {corners.length > 0 && words.corners(corners.length)}
        </p>
        <div className="row by-hand">
          <Button
            size="round"
            disabled={corners.length === 0 && rings.length === 0}
            onClick={() => change(withoutLast)}
          >
            {corners.length > 0 || rings.length === 0 ? words.cornerUndo : words.ringUndo[of]}
          </Button>
          {rings.length > 0 && corners.length === 0 && (
            <Button size="round" onClick={() => change(withoutRing)}>
              {words.ringAway[of]}
            </Button>
          )}
          <Button size="round" kind="main" disabled={stopped !== undefined} onClick={() => change(closed)}>
            {words.close}
          </Button>
        </div>
        {stopped === 'crosses' && <p className="strong">{words.crosses}</p>}
        {stopped === 'too few' && corners.length > 0 && <p className="soft">{words.closeNeeds}</p>}
        {corners.length > 0 && (
          <>
            <p className="soft small">{words.cornerChosen(which + 1, corners.length)}</p>
            <div className="row by-hand">
              <Button size="round" disabled={which <= 0} onClick={() => setChosen(which - 1)}>
                {words.cornerBefore}
              </Button>
              <Button size="round" disabled={which >= corners.length - 1} onClick={() => setChosen(which + 1)}>
                {words.cornerAfter}
              </Button>
            </div>
            <NudgePad
              what={words.movedCorner}
              aspect={aspectOf(size)}
              onMove={(by) => onChange((before) => moved(before, which, by))}
            />
          </>
        )}
        {children}
      </div>
    </div>
  );
}
