import { useEffect } from 'react';
import {
  askToKeep,
  checkWhenDue,
  lastChecked,
  notNow,
  persistenceWanted,
  sinceCarried,
  storageHealth,
} from '../../actions';
import { date, sayReason, w } from '../../words';
import { Button, LinkButton, Notice } from '../parts';
import { pathTo, say, useDesk, useQuestion } from '../shell';

const words = w.keeping;

/** After so many rounds that are on this device only it is said as a caution; before, in a line. Our own figure, no source. */
const roundsToCaution = 3;

/** How long the first screen is left alone before the monthly look through begins. Milliseconds. */
const settled = 10_000;

/** On the first screen: what should be done to keep the record, where something should. */
export function KeepSafe() {
  const desk = useDesk();
  const wanted = useQuestion(persistenceWanted(desk));
  const since = useQuestion(sinceCarried(desk));
  const last = useQuestion(lastChecked(desk));
  const health = useQuestion(storageHealth(desk));
  useEffect(() => {
    // Begun, it goes on beside whatever comes next.
    const timer = setTimeout(() => void checkWhenDue(desk), settled);
    return () => clearTimeout(timer);
  }, [desk]);
  if (desk.invented) return null;
  const ask = async () => say((await askToKeep(desk)) === 'yes' ? words.askedYes : words.askedNo);
  const found = last && last.faults.length + last.altered.length > 0;
  // An address that is not secure was said before the first entry, and is of no use to hear each morning.
  const notes = health?.notes.filter(({ code }) => code !== 'address not secure') ?? [];
  return (
    <>
      {notes.map((note) => (
        <Notice key={note.code} kind="caution" title={sayReason(note)} />
      ))}
      {found && (
        <Notice
          kind="problem"
          title={words.faultsFound}
          actions={<LinkButton to={pathTo.keeping()}>{words.toKeeping}</LinkButton>}
        >
          <p>{words.faultsFoundWhat}</p>
        </Notice>
      )}
      {wanted && (
        <Notice
          title={words.askTitle}
          actions={
            <>
              <Button onClick={ask}>{words.ask}</Button>
              <Button kind="quiet" onClick={() => notNow(desk)}>
                {words.askNotNow}
              </Button>
            </>
          }
        >
          <p>{words.askWhat}</p>
        </Notice>
      )}
      {since && since.rounds > 0 && (
        <Notice
          kind={since.rounds >= roundsToCaution ? 'caution' : 'note'}
          title={words.carriedSince(since.rounds)}
          actions={<LinkButton to={pathTo.carry()}>{words.carryDo}</LinkButton>}
        >
          {since.last && <p>{words.carriedSinceWhat(date(since.last.at.slice(0, 10)))}</p>}
        </Notice>
      )}
    </>
  );
}
