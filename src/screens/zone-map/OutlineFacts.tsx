import { type DrawnOutline, editZone, type SideOnMap, setObliquity } from '../../actions';
import { areaFromOutline, isRefused, obliquities } from '../../engine/photo';
import { areaOn, type Thing } from '../../engine/record';
import { area, number, sayReason, w } from '../../words';
import { Button, Choice, FigureText, Notice } from '../parts';
import { say, useDeed, useDesk } from '../shell';

const words = w.zoneMap.outline;

interface OutlineFactsProps {
  readonly zone: Thing<'zone'>;
  readonly side: SideOnMap;
  readonly drawn: DrawnOutline;
}

/** How folded the surface is there, and the area that comes to with the scale of the picture. */
export function OutlineFacts({ zone, side, drawn }: OutlineFactsProps) {
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
      <AreaTold zone={zone} side={side} drawn={drawn} />
    </>
  );
}

function AreaTold({ zone, side, drawn }: OutlineFactsProps) {
  const desk = useDesk();
  const { run, refused } = useDeed();
  const { scale } = side.elevation.body;
  if (!side.size) return <p className="soft">{words.areaNeedsSize}</p>;
  if (!scale) return <p className="soft">{words.areaNeedsScale}</p>;
  const told = areaFromOutline(drawn.outline, side.size, scale, drawn.thing.body.obliquity);
  if (isRefused(told)) return <p className="soft">{told.refused.map((reason) => sayReason(reason)).join(' ')}</p>;
  const now = areaOn(zone, desk.today());
  const same = now.method === told.method && Math.abs(now.m2 - told.m2) < 1e-9;
  const use = () =>
    run(
      () => editZone(desk, zone.thing, { area: told }),
      ({ versioned }) => say(versioned ? words.areaVersioned : words.areaUsed),
    );
  return (
    <div className="stack tight">
      {refused && <Notice kind="problem" title={refused} />}
      <p>
        <span className="strong">{words.area}:</span> <FigureText figure={{ ...told, value: told.m2 }} as="m2" />
      </p>
      <p className="soft small">
        {words.areaNow(area(now.m2))} {words.areaOneSide}
      </p>
      {!same && (
        <div className="row">
          <Button onClick={use}>{words.areaUse}</Button>
        </div>
      )}
    </div>
  );
}
