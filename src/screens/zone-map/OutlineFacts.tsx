import { type DrawnOutline, type SideOnMap, setObliquity } from '../../actions';
import { obliquities } from '../../engine/photo';
import type { Thing } from '../../engine/record';
import { number, w } from '../../words';
import { Choice, Notice } from '../parts';
import { useDeed, useDesk } from '../shell';

const words = w.zoneMap.outline;

interface OutlineFactsProps {
  readonly zone: Thing<'zone'>;
  readonly side: SideOnMap;
  readonly drawn: DrawnOutline;
}

/** How folded the surface is there. */
export function OutlineFacts({ drawn }: OutlineFactsProps) {
  const desk = useDesk();
  const { run, refused } = useDeed();
  const { thing, body } = drawn.thing;
  const said = obliquities.find(({ factor }) => factor === body.obliquity);
  return (
    <>
      {refused && <Notice kind="problem" title={refused} />}
      <Choice
        label={words.folds}
        hint={words.foldsWhat}
        tiles="narrow"
        options={obliquities.map(({ id, factor }) => ({
          value: id,
          label: words.fold[id],
          detail: words.times(number(factor, 1)),
        }))}
        value={said?.id}
        onChange={(id) => run(() => setObliquity(desk, thing, obliquities.find((row) => row.id === id)?.factor))}
      />
    </>
  );
}
