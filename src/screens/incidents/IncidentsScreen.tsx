import { useState } from 'react';
import { openPersonChecks, plannedAll, type WorkAround, yearAround } from '../../actions';
import type { Thing } from '../../engine/record';
import { incidentSortOf } from '../../engine/trade';
import { date, w, workName } from '../../words';
import { AddIcon, Button, EmptyState, LinkButton, Page, Reading, Section, StopIcon } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';
import { CloseIncidentSheet } from './CloseIncidentSheet';
import { IncidentSheet } from './IncidentSheet';
import './incidents.css';

const words = w.incidents;

type Open = { readonly sheet: 'report' | 'close'; readonly incident?: Thing<'incident'> };

/** What happened between rounds: open ones first, danger above all. */
export function IncidentsScreen() {
  const desk = useDesk();
  const planned = useQuestion(plannedAll(desk));
  const around = useQuestion(yearAround(desk));
  const checks = useQuestion(openPersonChecks(desk));
  const [open, setOpen] = useState<Open>();
  const back = { to: pathTo.plan(), label: words.toPlan };
  if (!planned || !around || !checks)
    return (
      <Page title={words.title} lead={words.lead} back={back}>
        <Reading />
      </Page>
    );
  const incidents = [...planned.incident].sort(byUrgency);
  const shown = (closed: boolean) => incidents.filter(({ body }) => (body.closed !== undefined) === closed);
  const list = (rows: readonly Thing<'incident'>[]) => (
    <ul className="bare stack">
      {rows.map((incident) => (
        <li key={incident.thing}>
          <IncidentCard
            incident={incident}
            work={around.works.find(({ sculpture }) => sculpture.thing === incident.body.sculpture)}
            onOpen={(sheet) => setOpen({ sheet, incident })}
          />
        </li>
      ))}
    </ul>
  );
  return (
    <Page
      title={words.title}
      lead={words.lead}
      back={back}
      actions={
        <Button kind="main" size="round" icon={<AddIcon />} onClick={() => setOpen({ sheet: 'report' })}>
          {words.report}
        </Button>
      }
    >
      {incidents.length === 0 && (
        <EmptyState title={words.empty}>
          <p>{words.emptyWhat}</p>
        </EmptyState>
      )}
      {shown(false).length > 0 && (
        <Section title={words.open} lead={words.who}>
          {list(shown(false))}
        </Section>
      )}
      {shown(true).length > 0 && <Section title={words.closed}>{list(shown(true))}</Section>}
      {open?.sheet === 'report' && (
        <IncidentSheet works={around.works} incident={open.incident} onClose={() => setOpen(undefined)} />
      )}
      {open?.sheet === 'close' && open.incident && (
        <CloseIncidentSheet
          incident={open.incident}
          checkOpen={checks.some(({ body }) => body.sculpture === open.incident?.body.sculpture)}
          onClose={() => setOpen(undefined)}
        />
      )}
    </Page>
  );
}

const pressing = { yes: 0, possible: 1, none: 2 } as const;

const byUrgency = (a: Thing<'incident'>, b: Thing<'incident'>): number =>
  (a.body.closed ? 0 : pressing[a.body.danger]) - (b.body.closed ? 0 : pressing[b.body.danger]) ||
  b.body.date.localeCompare(a.body.date) ||
  (a.thing < b.thing ? -1 : 1);

interface IncidentCardProps {
  readonly incident: Thing<'incident'>;
  readonly work: WorkAround | undefined;
  readonly onOpen: (sheet: Open['sheet']) => void;
}

function IncidentCard({ incident, work, onOpen }: IncidentCardProps) {
  const { body } = incident;
  const letters = work?.zones.filter(({ thing }) => body.zones?.includes(thing)).map((zone) => zone.body.letter) ?? [];
  const where = work ? workName(work.sculpture) : words.noWork;
  const danger = body.danger !== 'none' && !body.closed;
  const told = (body.told ?? []).map(({ role, name }) => (name ? `${role}, ${name}` : role));
  return (
    <article className={danger ? 'incident danger' : 'incident'}>
      {danger && <StopIcon />}
      <div className="stack tight grow">
        <h3>
          {incidentSortOf(body.sort)?.name ?? body.sort}, <span className="figures">{date(body.date)}</span>
        </h3>
        <p className="soft small">
          {[where, letters.length > 0 && w.logbook.zoneOf(letters.join(', ')), body.time].filter(Boolean).join(' · ')}
        </p>
        {danger && <p className="strong">{words.dangers[body.danger]}</p>}
        <p>{body.what}</p>
        {body.done && <p>{body.done}</p>}
        {told.length > 0 && <p className="soft small">{words.toldBy(told)}</p>}
        {body.closed && (
          <p className="soft small">
            {[words.closedOn(date(body.closed.on)), body.closed.note].filter(Boolean).join(' · ')}
          </p>
        )}
        <div className="row not-printed">
          <Button onClick={() => onOpen('report')}>{words.edit}</Button>
          {!body.closed && <Button onClick={() => onOpen('close')}>{words.close}</Button>}
          {body.sculpture && !body.closed && (
            <LinkButton kind="quiet" to={pathTo.startRound(body.sculpture)}>
              {words.round}
            </LinkButton>
          )}
        </div>
      </div>
    </article>
  );
}
