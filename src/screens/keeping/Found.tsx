import type { Checked } from '../../actions';
import { date, sayReason, w, whole } from '../../words';
import { Button, LinkButton, Notice } from '../parts';
import { pathTo } from '../shell';

const words = w.keeping;

interface FoundProps {
  readonly found: Checked;
  readonly busy: boolean;
  readonly onAnew: () => void;
  readonly onAside: () => void;
  readonly onClear: () => void;
}

/** What looking through found, each with what to do about it. */
export function Found({ found, busy, onAnew, onAside, onClear }: FoundProps) {
  const { day, entries, photos, altered, orphans, missing, faults } = found;
  const lost = faults.some(({ code }) => code === 'counts differ');
  const sound = faults.length === 0 && altered.length === 0;
  return (
    <>
      {sound && (
        <Notice title={words.throughOn(date(day))}>
          <p>{words.sound(words.entries(entries, whole(entries)), words.photos(photos, whole(photos)))}</p>
          {missing > 0 && <p>{words.missing(missing)}</p>}
        </Notice>
      )}
      {faults.length > 0 && (
        <Notice
          kind="problem"
          title={lost ? words.lostTitle : words.anewTitle}
          actions={
            <>
              <LinkButton to={pathTo.carry()}>{words.carryDo}</LinkButton>
              <Button onClick={onAnew} disabled={busy}>
                {words.anewDo}
              </Button>
            </>
          }
        >
          {faults.map((fault) => (
            <p key={fault.code}>{sayReason(fault)}</p>
          ))}
          <p>{lost ? words.lostWhat : words.anewWhat}</p>
        </Notice>
      )}
      {altered.length > 0 && (
        <Notice
          kind="problem"
          title={words.altered(altered.length)}
          actions={
            <>
              <Button onClick={onAside} disabled={busy}>
                {words.alteredDo}
              </Button>
              <LinkButton to={pathTo.carry()}>{words.carryIn}</LinkButton>
            </>
          }
        >
          <p>{words.alteredWhat}</p>
        </Notice>
      )}
      {orphans.length > 0 && (
        <Notice
          title={words.stray(orphans.length)}
          actions={
            <Button onClick={onClear} disabled={busy}>
              {words.strayDo}
            </Button>
          }
        >
          <p>{words.strayWhat}</p>
        </Notice>
      )}
    </>
  );
}
