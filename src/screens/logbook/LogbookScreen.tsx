import { useState } from 'react';
import { type Planned, plannedOf, sculptureRecordOf } from '../../actions';
import type { SculptureRecord, Thing } from '../../engine/record';
import { w, workName } from '../../words';
import { AddIcon, Button, EmptyState, LinkButton, Page, Reading, Tick } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';
import { NotHere } from '../shell/NotHere';
import { EntrySheet } from './EntrySheet';
import { LogbookLine } from './LogbookLine';
import { type LogLine, linesOf } from './lines';
import './logbook.css';

const words = w.logbook;

/** What was done to a work, and the looks between rounds, the last first. */
export function LogbookScreen({ sculpture }: { readonly sculpture: string }) {
  const desk = useDesk();
  const record = useQuestion(sculptureRecordOf(desk, sculpture));
  const planned = useQuestion(plannedOf(desk, sculpture));
  if (record === undefined || (record !== null && !planned)) return <Reading />;
  if (record === null || !planned) return <NotHere />;
  return <Logbook record={record} planned={planned} />;
}

function Logbook({ record, planned }: { readonly record: SculptureRecord; readonly planned: Planned }) {
  const { thing, body } = record.sculpture;
  const [open, setOpen] = useState<Thing<'treatment'> | 'new'>();
  const [rounds, setRounds] = useState(true);
  const lines = linesOf(record, planned).filter(({ kind }) => rounds || kind !== 'round');
  const edit = (line: LogLine) => (line.kind === 'treatment' ? () => setOpen(line.treatment) : undefined);
  return (
    <Page
      title={words.title}
      over={workName({ body })}
      lead={words.lead}
      back={{ to: pathTo.sculpture(thing), label: body.title || w.sculptures.untitled }}
      actions={
        <Button kind="main" size="round" icon={<AddIcon />} onClick={() => setOpen('new')}>
          {words.add}
        </Button>
      }
    >
      <div className="row not-printed">
        {record.rounds.length > 0 && <Tick label={words.showRounds} checked={rounds} onChange={setRounds} />}
        <LinkButton kind="quiet" to={pathTo.careDay(thing)}>
          {words.careDay}
        </LinkButton>
        <LinkButton kind="quiet" to={pathTo.season(thing)}>
          {words.season}
        </LinkButton>
        <LinkButton kind="quiet" to={pathTo.metalLedger(thing)}>
          {words.metal}
        </LinkButton>
        {record.rounds.length > 0 && (
          <LinkButton kind="quiet" to={pathTo.holds()}>
            {w.holds.link}
          </LinkButton>
        )}
      </div>
      {lines.length === 0 && (
        <EmptyState title={words.empty}>
          <p>{words.emptyWhat}</p>
        </EmptyState>
      )}
      <ol className="log bare">
        {lines.map((line) => (
          <li key={line.key} className={`log-line ${line.kind}`}>
            <LogbookLine line={line} onEdit={edit(line)} />
          </li>
        ))}
      </ol>
      {open && (
        <EntrySheet
          record={record}
          planned={planned}
          entry={open === 'new' ? undefined : open}
          onClose={() => setOpen(undefined)}
        />
      )}
    </Page>
  );
}
