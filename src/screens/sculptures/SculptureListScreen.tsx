import { useState } from 'react';
import { collectionState, type SculptureRow, sculptureList } from '../../actions';
import { w } from '../../words';
import { AddIcon, EmptyState, Field, LinkButton, Page, Reading } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';
import { PersonChecks } from './PersonChecks';
import { RoundsUnderWay } from './RoundsUnderWay';
import { SculptureCard } from './SculptureCard';
import { WelcomeScreen } from './WelcomeScreen';
import './list.css';

/** With more works than this a way to find one by its words is offered. */
const worthFinding = 8;

/** The first screen: the works in most need first, or, where nothing was begun, the ways to begin. */
export function SculptureListScreen() {
  const desk = useDesk();
  const collection = useQuestion(collectionState(desk));
  const rows = useQuestion(sculptureList(desk));
  if (!collection || !rows) return <Reading />;
  if (rows.length > 0) return <Works rows={rows} over={collection.name ?? undefined} />;
  if (collection.name === null) return <WelcomeScreen />;
  return (
    <Page title={w.sculptures.title} over={collection.name}>
      <EmptyState
        title={w.sculptures.emptyTitle}
        actions={
          <LinkButton to={pathTo.newSculpture()} kind="main" size="big" icon={<AddIcon />}>
            {w.sculptures.add}
          </LinkButton>
        }
      >
        <p>{w.sculptures.empty}</p>
      </EmptyState>
    </Page>
  );
}

function Works({ rows, over }: { readonly rows: readonly SculptureRow[]; readonly over: string | undefined }) {
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
          <LinkButton to={pathTo.walk()}>{w.walk.link}</LinkButton>
          <LinkButton to={pathTo.newSculpture()} icon={<AddIcon />}>
            {w.sculptures.add}
          </LinkButton>
        </>
      }
    >
      <PersonChecks titles={new Map(rows.map(({ thing, body }) => [thing, body.title]))} />
      <RoundsUnderWay />
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
        <LinkButton kind="quiet" to={pathTo.holds()}>
          {w.sculptures.toHolds}
        </LinkButton>
      </div>
    </Page>
  );
}
