import { Link } from 'wouter';
import { w } from '../../words';
import { OnIcon } from '../parts';
import { pathTo } from '../shell';
import type { LogLine } from './lines';

interface LogbookLineProps {
  readonly line: LogLine;
  readonly onEdit: (() => void) | undefined;
}

/** A treatment opens to be edited, a round and what happened go to their pages; a look is only told. */
export function LogbookLine({ line, onEdit }: LogbookLineProps) {
  const told = (
    <>
      <span className="log-date figures">{line.when}</span>
      <span className="grow">
        <span className="log-what">{line.what}</span>
        {(line.where || line.details.length > 0) && (
          <span className="log-detail soft">{[line.where, ...line.details].filter(Boolean).join(' · ')}</span>
        )}
        {line.note && <span className="log-detail">{line.note}</span>}
        {line.follows?.map((sentence) => (
          <span key={sentence} className="log-detail log-follows">
            {sentence}
          </span>
        ))}
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
  const to =
    line.kind === 'elsewhere'
      ? line.to
      : line.kind === 'round' && (line.ended ? pathTo.endRound(line.round) : pathTo.round(line.round));
  if (to)
    return (
      <Link href={to} className="log-entry">
        {told}
        <OnIcon />
      </Link>
    );
  return <div className="log-entry">{told}</div>;
}
