import { useState } from 'react';
import type { SculptureRow } from '../../actions';
import { w } from '../../words';
import { AddIcon, Field, LinkButton, Page } from '../parts';
import { pathTo } from '../shell';
import { KeepSafe } from './KeepSafe';
import { PersonChecks } from './PersonChecks';
import { PhotoWaits } from './PhotoWaits';
import { RoundsUnderWay } from './RoundsUnderWay';
import { SculptureCard } from './SculptureCard';
import './list.css';

/** With more works than this a way to find one by its words is offered. */
const worthFinding = 8;

/** The works, those in most need first. */
export function Works({ rows, over }: { readonly rows: readonly SculptureRow[]; readonly over: string | undefined }) {
  const [sought, setSought] = useState('');
  const words = sought.trim().toLocaleLowerCase();
  const found = rows.filter(({ body }) => `${body.number} ${body.title}`.toLocaleLowerCase().includes(words));
  return (
    <Page
      title={w.sculptures.title}
      over={over}
      lead={w.sculptures.lead}
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
      {rows.length > worthFinding && <Field label={w.sculptures.find} value={sought} onChange={setSought} optional />}
      {found.length === 0 && <p className="soft">{w.sculptures.foundNone}</p>}
      <ol className="works bare">
        {found.map((row) => (
          <li key={row.thing}>
            <SculptureCard row={row} />
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
