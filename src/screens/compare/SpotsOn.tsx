import { useState } from 'react';
import { colourAt } from '../../actions';
import { coverageNumbers, isRefused, type Point } from '../../engine/photo';
import { w } from '../../words';
import { Button, Choice, Notice, PhotoStage, stagePoint } from '../parts';
import { Reasons } from '../parts/Reasons';
import { useDeed, useDesk } from '../shell';
import { noSpots, type Spots, tellsApart } from './keptSpots';
import type { Looked } from './looked';

const words = w.compare;
const sorts = ['green', 'sound'] as const;
/** Fewer say nothing yet, and are counted only. */
const least = coverageNumbers.samplesEach.value;
type Sort = (typeof sorts)[number];

interface SpotsOnProps {
  readonly which: 'earlier' | 'later';
  readonly shown: Looked;
  readonly spots: Spots;
  /** They are those of a mask that was measured. */
  readonly kept: boolean;
  readonly onChange: (spots: Spots) => void;
}

/** Spots of green and of sound surface touched on one photo. */
export function SpotsOn({ which, shown, spots, kept, onChange }: SpotsOnProps) {
  const desk = useDesk();
  const { run, refused, busy } = useDeed();
  const [sort, setSort] = useState<Sort>('green');
  const [order, setOrder] = useState<readonly Sort[]>([]);
  const touched = (at: Point) => {
    if (busy) return;
    run(
      () => colourAt(desk, shown.row.photo.thing, at),
      ({ colour: [r, g, b] }) => {
        setOrder([...order, sort]);
        onChange({ ...spots, [sort]: [...spots[sort], { at: [at[0], at[1]], colour: [r, g, b] }] });
      },
    );
  };
  const last = order.at(-1);
  const takeBack = () => {
    if (!last) return;
    setOrder(order.slice(0, -1));
    onChange({ ...spots, [last]: spots[last].slice(0, -1) });
  };
  const told = sorts.every((of) => spots[of].length >= least) ? tellsApart(spots) : undefined;
  const clear = () => {
    setOrder([]);
    onChange(noSpots);
  };
  return (
    <figure className="stack tight">
      <figcaption className="strong">{words.tapOn(which)}</figcaption>
      {refused && <Notice kind="problem" title={refused} />}
      <PhotoStage
        url={shown.url}
        alt={shown.alt}
        size={shown.size}
        onTouch={touched}
        touchDoes={words.tapDoes(sort, which)}
      >
        {sorts.flatMap((of) =>
          spots[of].map(({ at }) => {
            const [x, y] = stagePoint([at[0], at[1]], shown.size);
            return (
              <g key={`${of} ${at.join(' ')}`} className="spot-touched">
                <circle className="under" cx={x} cy={y} r={14} />
                <circle cx={x} cy={y} r={14} />
                {of === 'green' && <circle className="full" cx={x} cy={y} r={6} />}
              </g>
            );
          }),
        )}
      </PhotoStage>
      <Choice
        label={words.sort}
        tiles="narrow"
        options={sorts.map((value) => ({ value, label: words.sorts[value] }))}
        value={sort}
        onChange={setSort}
      />
      <p role="status">{words.tapped(spots.green.length, spots.sound.length)}</p>
      {told && isRefused(told) && (
        <Notice kind="caution" title={words.spotsTooAlike}>
          <Reasons reasons={told.refused} />
        </Notice>
      )}
      {kept && <p className="soft small">{words.fromMask}</p>}
      <div className="row">
        {last && <Button onClick={takeBack}>{words.takeBack}</Button>}
        {spots.green.length + spots.sound.length > 0 && (
          <Button kind="quiet" onClick={clear}>
            {words.clearSpots}
          </Button>
        )}
      </div>
    </figure>
  );
}
