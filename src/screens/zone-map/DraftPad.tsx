import type { MapDraft } from '../../actions';
import type { Size } from '../../engine/photo';
import type { Thing } from '../../engine/record';
import { w } from '../../words';
import { Button, UndoIcon } from '../parts';
import { CornersPad } from './CornersPad';
import { takenBack } from './drawn';
import { ScalePad } from './ScalePad';

const words = w.zoneMap.outline;

export type ChangeDraft = (to: (draft: MapDraft | null) => MapDraft | null) => void;

interface DraftPadProps {
  readonly draft: MapDraft;
  readonly elevation: Thing<'elevation'>;
  readonly size: Size;
  readonly zoneOf: (zone: string | null) => Thing<'zone'> | undefined;
  readonly placing: boolean;
  readonly onPlacing: (placing: boolean) => void;
  readonly onChange: ChangeDraft;
  readonly onLeave: () => void;
  readonly onKeep: () => void;
}

/** What is being drawn, and the few buttons it needs, in the thumb's reach. */
export function DraftPad(props: DraftPadProps) {
  const { draft, onChange, onKeep, onLeave: leave, zoneOf } = props;
  if (draft.doing === 'scale') return <ScalePad {...props} draft={draft} />;
  if (draft.doing === 'water') {
    const from = zoneOf(draft.from);
    return (
      <>
        <p role="status" className="strong">
          {from ? words.waterTo(from.body.letter) : words.waterFrom}
        </p>
        <div className="row by-hand">
          {from && (
            <Button size="round" icon={<UndoIcon />} onClick={() => onChange(() => ({ doing: 'water', from: null }))}>
              {words.leave}
            </Button>
          )}
          <Button size="round" kind="main" onClick={leave}>
            {words.waterDone}
          </Button>
        </div>
      </>
    );
  }
  const zone = zoneOf(draft.zone)?.body;
  const name = <span className="strong">{zone && words.zone(zone.letter, zone.name)}</span>;
  if (draft.doing === 'corners') return <CornersPad {...props} draft={draft} name={name} />;
  const { closed, corners } = draft;
  return (
    <>
      <p role="status">
        {name} {corners.length > 0 ? words.corners(corners.length) : closed.length > 0 ? words.another : words.how}
      </p>
      <div className="row by-hand">
        <Button size="round" onClick={leave}>
          {closed.length > 0 ? words.leaveAs : words.leave}
        </Button>
        <Button
          size="round"
          icon={<UndoIcon />}
          disabled={corners.length === 0}
          onClick={() => onChange((now) => now && takenBack(now))}
        >
          {words.undoCorner}
        </Button>
        <Button size="round" kind="main" disabled={corners.length < 3} onClick={onKeep}>
          {words.close}
        </Button>
      </div>
    </>
  );
}
