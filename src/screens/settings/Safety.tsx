import { useState } from 'react';
import { askPersistence, checkStore, storageHealth } from '../../actions';
import { bytes, sayReason, w, whole } from '../../words';
import { Button, LinkButton, Notice, Reading, Section } from '../parts';
import { pathTo, say, useDeed, useDesk, useQuestion } from '../shell';

const words = w.settings;

/** How safely the record lies on this device: our own count, and what the browser promises. */
export function Safety() {
  const desk = useDesk();
  const health = useQuestion(storageHealth(desk));
  const { run, refused, busy } = useDeed();
  const [counted, setCounted] = useState<string>();
  if (!health) return <Reading />;
  const { persisted, entries, photos, notes } = health;
  const ask = async () => say((await askPersistence(desk)) === 'yes' ? words.askedYes : words.askedNo);
  const count = () =>
    run(
      () => checkStore(desk),
      ({ entries: all, photos: kept, altered }) => {
        const said = altered > 0 ? words.alteredPhotos(altered) : words.checkedPhotos(kept, whole(kept));
        setCounted([words.checked(whole(all)), said].filter(Boolean).join(' '));
        say(words.checked(whole(all)));
      },
    );
  return (
    <Section title={words.safe}>
      {notes.map((note) => (
        <Notice key={note.code} kind="caution" title={sayReason(note)} />
      ))}
      {refused && <Notice kind="problem" title={refused} />}
      <Notice kind={persisted === 'yes' ? 'note' : 'caution'} title={words.persisted[persisted]}>
        <p>{words.holds(words.entries(whole(entries)), words.photos(whole(photos)), bytes(health.bytes))}</p>
        <p>{words.backup}</p>
        <p>{words.unencrypted}</p>
        {counted && <p className="strong">{counted}</p>}
      </Notice>
      <div className="row">
        <LinkButton to={pathTo.carry()}>{words.carryOut}</LinkButton>
        {persisted !== 'yes' && <Button onClick={ask}>{words.askPersist}</Button>}
        <Button onClick={count} disabled={busy}>
          {busy ? words.checking : words.check}
        </Button>
      </div>
    </Section>
  );
}
