import { useState } from 'react';
import { rulesOf } from '../../engine/hold';
import type { BodyOf } from '../../engine/record';
import { share, w, workName } from '../../words';
import { EmptyState, LinkButton } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { Select } from '../parts/Select';
import { pathTo } from '../shell';
import { Groups } from './Groups';
import { WhatCounts } from './WhatCounts';
import { ZonesOfHolds } from './ZonesOfHolds';
import { type HoldsTold, zoneRows } from './zoneRows';

const words = w.holds;
const everyWork = '';

interface HoldsViewProps {
  readonly insights: HoldsTold;
  readonly own: BodyOf<'holdRules'> | null;
  readonly mayWrite: boolean;
}

/** What is missing before anything can be told, and what to do first; null where nothing is missing. */
function Missing({ perWork }: Pick<HoldsTold, 'perWork'>) {
  const zones = perWork.flatMap(({ holds }) => holds);
  const toSculptures = <LinkButton to={pathTo.sculptures()}>{words.toSculptures}</LinkButton>;
  if (zones.length === 0)
    return (
      <EmptyState title={words.noZones} actions={toSculptures}>
        <p>{words.noZonesDo}</p>
      </EmptyState>
    );
  if (zones.every(({ holds, noHolds }) => holds.length + noHolds.length === 0))
    return (
      <EmptyState title={words.noCoating} actions={toSculptures}>
        <p>{words.noCoatingDo}</p>
      </EmptyState>
    );
  if (zones.every(({ holds, onNow }) => holds.length === 0 && (onNow === null || onNow.state === 'unknown')))
    return (
      <EmptyState title={words.noLooks} actions={<LinkButton to={pathTo.walk()}>{words.toWalk}</LinkButton>}>
        <p>{words.noLooksDo}</p>
      </EmptyState>
    );
  return null;
}

/** The page from what was worked out. */
export function HoldsView({ insights, own, mayWrite }: HoldsViewProps) {
  const [only, setOnly] = useState(everyWork);
  const { lives, perWork, workingOut } = insights;
  const rows = zoneRows(insights);
  const names = new Map(
    perWork.flatMap(({ record }) =>
      record.zones.map(
        ({ thing, body }) =>
          [thing, `${record.sculpture.body.title}, ${w.thenAndNow.zoneNamed(body.letter, body.name)}`] as const,
      ),
    ),
  );
  const works = [...new Map(rows.map(({ sculpture }) => [sculpture.thing, sculpture])).values()]
    .map(({ thing, body }) => ({ value: thing, label: workName({ body }) }))
    .sort((a, b) => a.label.localeCompare(b.label, 'en', { numeric: true }));
  const { returnLevel } = rulesOf({ holdRules: own });
  return (
    <>
      {workingOut > 0 && <p className="soft">{words.stillWorking(workingOut)}</p>}
      {workingOut === 0 && <Missing perWork={perWork} />}
      {works.length > 1 && (
        <div className="not-printed">
          <Select
            label={words.show}
            value={only}
            onChange={setOnly}
            options={[{ value: everyWork, label: words.all }, ...works]}
          />
        </div>
      )}
      {rows.length > 0 && (
        <ZonesOfHolds rows={rows.filter(({ sculpture }) => only === everyWork || sculpture.thing === only)} />
      )}
      {only === everyWork && <Groups lives={lives} level={share(returnLevel)} names={(thing) => names.get(thing)} />}
      <WhatCounts own={own} mayWrite={mayWrite} />
      <PrintRow how={pathTo.method()} />
    </>
  );
}
