import { keepTouches, type MeasureDraft, type MeasureOf } from '../../actions';
import { w } from '../../words';
import { Button, Notice } from '../parts';
import { useDeed, useDesk } from '../shell';

const words = w.measure;

interface ChangeMaskProps {
  readonly of: MeasureOf;
  readonly draft: MeasureDraft;
}

/** Back to the spots and the brush. Check dots speak of the mask they were laid over, so they are forgotten; a figure that was kept stands. */
export function ChangeMask({ of, draft }: ChangeMaskProps) {
  const desk = useDesk();
  const { run, refused, busy } = useDeed();
  const { seed, green, sound, brush } = draft.working;
  const kept = { ...(seed === undefined ? {} : { seed }), green: green ?? [], sound: sound ?? [], brush: brush ?? [] };
  return (
    <>
      {refused && <Notice kind="problem" title={refused} />}
      <Button
        size="round"
        disabled={busy}
        onClick={() => void run(() => keepTouches(desk, of, { ...draft, working: kept }))}
      >
        {words.maskChange}
      </Button>
    </>
  );
}
