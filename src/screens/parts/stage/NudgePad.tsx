import type { Point } from '../../../engine/photo';
import { w } from '../../../words';
import { Button } from '../Button';

/** What one touch of an arrow moves, in fractions of the picture's width: a millimetre on a picture two metres wide is half of it. */
export const nudge = 0.002;

interface NudgePadProps {
  /** What is moved, for ears. */
  readonly what: string;
  /** Height over width of the picture: a touch moves as far up as it does aside. */
  readonly aspect: number;
  readonly onMove: (by: Point) => void;
  readonly disabled?: boolean;
}

/** Four arrows: what was put down with a glove is set right without a drag. */
export function NudgePad({ what, aspect, onMove, disabled = false }: NudgePadProps) {
  const words = w.parts.stage;
  const arrow = (name: keyof typeof words.arrows, sign: string, by: Point) => (
    <Button
      key={name}
      size="round"
      disabled={disabled}
      aria-label={words.move(what, words.arrows[name])}
      onClick={() => onMove(by)}
    >
      <span aria-hidden="true">{sign}</span>
    </Button>
  );
  return (
    <fieldset className="row by-hand nudge">
      <legend className="only-heard">{words.moveWhat(what)}</legend>
      {arrow('left', '←', [-nudge, 0])}
      {arrow('up', '↑', [0, -nudge / aspect])}
      {arrow('down', '↓', [0, nudge / aspect])}
      {arrow('right', '→', [nudge, 0])}
    </fieldset>
  );
}
