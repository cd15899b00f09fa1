import { useState } from 'react';
import { sculptureRecordOf } from '../../actions';
import type { SculptureRecord, Thing } from '../../engine/record';
import { w } from '../../words';
import { AddIcon, Button, EmptyState, LinkButton, Page, Reading, Tick } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';
import { EntrySheet } from './EntrySheet';
import { LogbookLine } from './LogbookLine';
import { type LogLine, linesOf } from './lines';
import './logbook.css';

const words = w.logbook;

/** What was done to a work, and the looks between rounds, the last first. */
export function LogbookScreen({ sculpture }: { readonly sculpture: string }) {
  const record = useQuestion(sculptureRecordOf(useDesk(), sculpture));
  if (record === undefined) return <Reading />;
  if (record === null)
    return (
      <EmptyState
        page
        title={w.sculptures.work.notHere}
        actions={<LinkButton to={pathTo.sculptures()}>{w.sculptures.work.back}</LinkButton>}
      />
    );
  return <Logbook record={record} />;
}

function Logbook({ record }: { readonly record: SculptureRecord }) {
  const { thing, body } = record.sculpture;
  const [open, setOpen] = useState<Thing<'treatment'> | 'new'>();
  const [rounds, setRounds] = useState(true);
  const lines = linesOf(record).filter(({ kind }) => rounds || kind !== 'round');
  const edit = (line: LogLine) => (line.kind === 'treatment' ? () => setOpen(line.treatment) : undefined);
  return (
    <Page
      title={words.title}
      over={`${body.number} ${body.title}`.trim()}
      lead={words.lead}
      back={{ to: pathTo.sculpture(thing), label: body.title || w.sculptures.untitled }}
      actions={
        <Button kind="main" size="round" icon={<AddIcon />} onClick={() => setOpen('new')}>
          {words.add}
        </Button>
      }
    >
      {record.rounds.length > 0 && (
        <div className="row">
          <Tick label={words.showRounds} checked={rounds} onChange={setRounds} />
          <LinkButton kind="quiet" to={pathTo.holds()}>
            {w.holds.link}
          </LinkButton>
        </div>
      )}
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
        <EntrySheet record={record} entry={open === 'new' ? undefined : open} onClose={() => setOpen(undefined)} />
      )}
    </Page>
  );
}
