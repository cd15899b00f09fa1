import { type Measuring, setMeasuringPlace } from '../../actions';
import { type Size, zonePixels } from '../../engine/photo';
import { w, whole } from '../../words';
import { Button, Notice } from '../parts';
import { useDeed, useDesk } from '../shell';
import { CornersTool } from './CornersTool';
import { cannotClose, closed, type Drawing, nothingDrawn, wholePicture } from './drawing';

const words = w.measure;

interface PartToolProps {
  readonly at: Measuring;
  readonly about: string;
  readonly size: Size;
  readonly url: string | null | undefined;
  readonly alt: string;
}

/** Which part of the photo is measured, drawn by taps. */
export function PartTool({ at, about, size, url, alt }: PartToolProps) {
  const desk = useDesk();
  const photo = at.photo.thing;
  const { run, refused } = useDeed();
  const now = at.place.drawn ?? nothingDrawn;
  const change = (touch: (before: Drawing) => Drawing) =>
    void run(() => setMeasuringPlace(desk, photo, about, ({ drawn }) => ({ drawn: touch(drawn ?? nothingDrawn) })));
  const stop = () => void setMeasuringPlace(desk, photo, about, { open: undefined });
  const finish = () => {
    if (now.corners.length > 0) change(closed);
    stop();
  };
  const open = now.corners.length > 0 && cannotClose(now) !== undefined;
  return (
    <>
      <p className="page-lead">{words.partLead}</p>
      {refused && <Notice kind="problem" title={refused} />}
      <CornersTool url={url} alt={alt} size={size} of="piece" drawing={now} onChange={change}>
        {now.rings.length > 0 && (
          <p className="soft small figures">{words.partIs(whole(zonePixels(now.rings, size)))}</p>
        )}
        <div className="row by-hand measure-ends">
          <Button size="round" onClick={() => change(() => ({ rings: wholePicture, corners: [] }))}>
            {words.partWhole}
          </Button>
          <Button size="round" onClick={stop}>
            {words.stop}
          </Button>
          <Button
            size="round"
            kind="main"
            disabled={open || (now.rings.length === 0 && now.corners.length === 0)}
            onClick={finish}
          >
            {words.partDone}
          </Button>
        </div>
      </CornersTool>
    </>
  );
}
