import { Link } from 'wouter';
import { date, w } from '../../words';
import { OnIcon } from '../parts';
import { pathTo } from '../shell';
import type { LogLine } from './lines';

interface LogbookLineProps {
  readonly line: LogLine;
  readonly onEdit: (() => void) | undefined;
}

/** A treatment opens to be edited, a round goes to its page; a look is only told. */
export function LogbookLine({ line, onEdit }: LogbookLineProps) {
  const told = (
    <>
      <span className="log-date figures">{date(line.date)}</span>
      <span className="grow">
        <span className="log-what">{line.what}</span>
        {(line.where || line.details.length > 0) && (
          <span className="log-detail soft">{[line.where, ...line.details].filter(Boolean).join(' · ')}</span>
        )}
        {line.note && <span className="log-detail">{line.note}</span>}
      </span>
    </>
  );
  if (onEdit)
    return (
      <button type="button" className="log-entry" onClick={onEdit}>
        {told}
        <span className="unseen">{w.logbook.edit}</span>
        <OnIcon />
      </button>
    );
  if (line.kind === 'round')
    return (
      <Link href={line.ended ? pathTo.endRound(line.round) : pathTo.round(line.round)} className="log-entry">
        {told}
        <OnIcon />
      </Link>
    );
  return <div className="log-entry">{told}</div>;
}
