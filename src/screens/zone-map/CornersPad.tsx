import type { ReactNode } from 'react';
import type { MapDraft } from '../../actions';
import { aspectOf, type CornerAt, type Size, withCorner, withCornerAfter } from '../../engine/photo';
import { w } from '../../words';
import { Button, NudgePad } from '../parts';
import type { ChangeDraft } from './DraftPad';

const words = w.zoneMap.outline;

type Moving = Extract<MapDraft, { doing: 'corners' }>;

interface CornersPadProps {
  readonly draft: Moving;
  readonly name: ReactNode;
  readonly size: Size;
  readonly placing: boolean;
  readonly onPlacing: (placing: boolean) => void;
  readonly onChange: ChangeDraft;
  readonly onKeep: () => void;
  readonly onLeave: () => void;
}

/** All corners of an outline in one row, piece after piece. */
const allCorners = ({ outline }: Moving): readonly CornerAt[] =>
  outline.flatMap((corners, ring) => corners.map((_, corner) => ({ ring, corner })));

/** Corners of an outline set right: chosen by a touch or one after the other, moved by arrows. */
export function CornersPad({ draft, name, size, placing, onPlacing, onChange, onKeep, onLeave }: CornersPadProps) {
  const all = allCorners(draft);
  const { at } = draft;
  const index = at ? all.findIndex(({ ring, corner }) => ring === at.ring && corner === at.corner) : -1;
  const change = (to: (now: Moving) => Moving) => onChange((now) => (now?.doing === 'corners' ? to(now) : now));
  const hold = (step: number) =>
    change((now) => ({ ...now, at: all[(index + step + all.length) % all.length] ?? null }));
  const held = index >= 0 ? at : null;
  const few = held !== null && (draft.outline[held.ring]?.length ?? 0) <= 3;
  return (
    <>
      <p role="status">
        {name} {held ? words.corner(index + 1, all.length) : words.cornerHow}
      </p>
      <div className="row by-hand">
        <Button size="round" onClick={() => hold(index < 0 ? 0 : -1)}>
          {words.cornerBefore}
        </Button>
        <Button size="round" onClick={() => hold(1)}>
          {words.cornerAfter}
        </Button>
        <NudgePad
          what={words.cornerMoved}
          aspect={aspectOf(size)}
          disabled={!held}
          onMove={([x, y]) =>
            held && change((now) => ({ ...now, outline: withCorner(now.outline, held, (p) => [p[0] + x, p[1] + y]) }))
          }
        />
      </div>
      {held && (
        <div className="row by-hand">
          <Button size="round" aria-pressed={placing} onClick={() => onPlacing(!placing)}>
            {words.placeAnew}
          </Button>
          <Button size="round" onClick={() => change((now) => ({ ...now, ...withCornerAfter(now.outline, held) }))}>
            {words.cornerAdd}
          </Button>
          <Button
            size="round"
            disabled={few}
            onClick={() =>
              change((now) => ({ ...now, outline: withCorner(now.outline, held, () => undefined), at: null }))
            }
          >
            {words.cornerRemove}
          </Button>
        </div>
      )}
      <div className="row by-hand">
        <Button size="round" onClick={onLeave}>
          {words.leaveAs}
        </Button>
        <Button size="round" kind="main" onClick={onKeep}>
          {words.keep}
        </Button>
      </div>
    </>
  );
}
