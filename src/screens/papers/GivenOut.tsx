import { useState } from 'react';
import type { Thing } from '../../engine/record';
import { paperSortOf } from '../../papers';
import { date, w } from '../../words';
import { Button, LinkButton } from '../parts';
import { LongList } from '../parts/LongList';
import { pathTo } from '../shell';
import { GivenOutSheet } from './GivenOutSheet';
import { aboutOf } from './ofPaper';

const words = w.paperHub.given;

interface GivenOutProps {
  readonly given: readonly Thing<'paperIssued'>[];
  /** State of the record now, where one paper is looked at. */
  readonly state?: string;
}

/** Papers that left, the newest first. */
export function GivenOut({ given, state }: GivenOutProps) {
  const [open, setOpen] = useState<Thing<'paperIssued'>>();
  const rows = [...given].sort((a, b) => b.body.date.localeCompare(a.body.date) || (a.thing < b.thing ? 1 : -1));
  return (
    <>
      {rows.length === 0 && <p className="soft">{words.none}</p>}
      <LongList
        rows={rows}
        className="stack"
        atOnce={20}
        show={(row) => (
          <li key={row.thing} className="card stack tight">
            <Copy row={row} state={state} onChange={() => setOpen(row)} />
          </li>
        )}
      />
      {open && <GivenOutSheet copy={open.body} thing={open.thing} onClose={() => setOpen(undefined)} />}
    </>
  );
}

interface CopyProps {
  readonly row: Thing<'paperIssued'>;
  readonly state: string | undefined;
  readonly onChange: () => void;
}

function Copy({ row: { body }, state, onChange }: CopyProps) {
  const status = w.paperLayout.status[body.status];
  return (
    <>
      <p>
        <span className="strong">{body.title}</span>
        {body.to && `, ${words.toWhom(body.to)}`}
      </p>
      <p className="soft">{words.row(date(body.date), status, body.by)}</p>
      {state !== undefined && <p>{state === body.state ? words.same : words.changed}</p>}
      {body.note && <p className="small">{body.note}</p>}
      <div className="row not-printed">
        <Button aria-label={words.changeOf(body.title, date(body.date))} onClick={onChange}>
          {words.change}
        </Button>
        {state === undefined && paperSortOf(body.paper) && (
          <LinkButton kind="quiet" to={pathTo.paper(body.paper, aboutOf(body))} label={`${words.open}: ${body.title}`}>
            {words.open}
          </LinkButton>
        )}
      </div>
    </>
  );
}
