import { useState } from 'react';
import type { SculptureRow } from '../../actions';
import { w } from '../../words';
import { AddIcon, Field, LinkButton, Page } from '../parts';
import { HeldLine } from '../parts/HeldLine';
import { useHeld } from '../parts/useHeld';
import { pathTo } from '../shell';
import { inOrder, orderOf } from './heldOrder';
import { KeepSafe } from './KeepSafe';
import { PersonChecks } from './PersonChecks';
import { PhotoWaits } from './PhotoWaits';
import { RoundsUnderWay } from './RoundsUnderWay';
import { SculptureCard } from './SculptureCard';
import './list.css';

/** With more works than this a way to find one by its words is offered. */
const worthFinding = 8;

const isKnown = ({ summary }: SculptureRow): boolean => summary !== undefined;

/** The works, those in most need first. While they are shown none changes its place unless a person says so. */
export function Works({ rows, over }: { readonly rows: readonly SculptureRow[]; readonly over: string | undefined }) {
  const [sought, setSought] = useState('');
  const words = sought.trim().toLocaleLowerCase();
  const order = useHeld(orderOf(rows));
  const [room] = useState(() => new Set(rows.filter((row) => !isKnown(row)).map(({ thing }) => thing)));
  const allKnown = rows.every(isKnown);
  const found = inOrder(rows, order.held).filter(({ body }) =>
    `${body.number} ${body.title}`.toLocaleLowerCase().includes(words),
  );
  return (
    <Page
      title={w.sculptures.title}
      over={over}
      lead={room.size > 0 ? w.sculptures.leadWaits : w.sculptures.lead}
      actions={
        <>
          <LinkButton to={pathTo.walk()}>{w.sculptures.toWalk}</LinkButton>
          <LinkButton to={pathTo.newSculpture()} icon={<AddIcon />}>
            {w.sculptures.add}
          </LinkButton>
        </>
      }
    >
      <PersonChecks titles={new Map(rows.map(({ thing, body }) => [thing, body.title]))} />
      <RoundsUnderWay />
      <PhotoWaits rows={rows} />
      <KeepSafe />
      {room.size > 0 && (
        <HeldLine
          waits={w.sculptures.orderWaits}
          came={w.sculptures.orderCame}
          take={w.sculptures.orderTake}
          shown={allKnown ? (order.newer ? 'came' : 'neither') : 'waits'}
          onTake={order.take}
        />
      )}
      {rows.length > worthFinding && <Field label={w.sculptures.find} value={sought} onChange={setSought} optional />}
      {found.length === 0 && <p className="soft">{w.sculptures.foundNone}</p>}
      <ol className="works bare">
        {found.map((row) => (
          <li key={row.thing}>
            <SculptureCard row={row} keepRoom={room.has(row.thing)} />
          </li>
        ))}
      </ol>
      <div className="row not-printed">
        <LinkButton kind="quiet" to={pathTo.ready()}>
          {w.ready.link}
        </LinkButton>
        <LinkButton kind="quiet" to={pathTo.holds()}>
          {w.sculptures.toHolds}
        </LinkButton>
      </div>
    </Page>
  );
}
