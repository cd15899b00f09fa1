import type { ReactNode } from 'react';
import { w } from '../../words';
import { Button, Choice } from '../parts';
import { type brushes, enoughSpots, type MaskTouches, type Sort } from './maskTouches';
import { Spots } from './Spots';

const words = w.measure;

/** What a touch on the picture does. */
export interface Brushing {
  readonly doing: 'tap' | 'brush';
  readonly sort: Sort;
  readonly brush: keyof typeof brushes;
}

interface MaskPadProps {
  readonly now: MaskTouches;
  readonly names: Readonly<Record<Sort, string>>;
  readonly brushing: Brushing;
  readonly onBrushing: (brushing: Brushing) => void;
  readonly onChange: (change: (before: MaskTouches) => MaskTouches) => void;
  readonly onStop: () => void;
  /** Lays the check dots; undefined while there is no mask to lay them over. */
  readonly onLay: (() => void) | undefined;
  /** What the mask says. */
  readonly children: ReactNode;
}

/** What a touch does, what was touched, and the way on to the check dots. */
export function MaskPad({ now, names, brushing, onBrushing, onChange, onStop, onLay, children }: MaskPadProps) {
  const { doing, sort, brush } = brushing;
  const tapped = now[sort].length;
  const undo = () =>
    onChange((before) =>
      doing === 'brush'
        ? { ...before, brush: before.brush.slice(0, -1) }
        : { ...before, [sort]: before[sort].slice(0, -1) },
    );
  return (
    <div className="measure-pad stack">
      <Spots touches={now} names={names} />
      {enoughSpots(now) && (
        <Choice
          label={words.touchDoes}
          size="round"
          options={(['tap', 'brush'] as const).map((value) => ({ value, label: words.doing[value] }))}
          value={doing}
          onChange={(next) => onBrushing({ ...brushing, doing: next })}
        />
      )}
      <Choice
        label={doing === 'tap' ? words.tapWhat : words.brushWhat}
        size="round"
        tiles="narrow"
        options={(['green', 'sound'] as const).map((value) => ({ value, label: names[value] }))}
        value={sort}
        onChange={(next) => onBrushing({ ...brushing, sort: next })}
      />
      {doing === 'brush' && (
        <Choice
          label={words.brushSize}
          size="round"
          tiles="narrow"
          options={(['small', 'middle', 'large'] as const).map((value) => ({ value, label: words.brushSizes[value] }))}
          value={brush}
          onChange={(next) => onBrushing({ ...brushing, brush: next })}
        />
      )}
      {children}
      <div className="row by-hand measure-ends">
        <Button size="round" disabled={doing === 'brush' ? now.brush.length === 0 : tapped === 0} onClick={undo}>
          {doing === 'brush' ? words.dabUndo : words.spotUndo(names[sort])}
        </Button>
        <Button size="round" onClick={onStop}>
          {words.stop}
        </Button>
        <Button size="round" kind="main" disabled={!onLay} onClick={() => onLay?.()}>
          {words.checkLay}
        </Button>
      </div>
    </div>
  );
}
