import { askToKeep, storageHealth } from '../../actions';
import { bytes, sayReason, w, whole } from '../../words';
import { Button, Notice, Reading, Section } from '../parts';
import { say, useDesk, useQuestion } from '../shell';

const words = w.keeping;

/** Our own count, and what the browser promises. */
export function OnThisDevice() {
  const desk = useDesk();
  const health = useQuestion(storageHealth(desk));
  if (!health) return <Reading />;
  const { persisted, entries, photos, notes, forgets } = health;
  const ask = async () => say((await askToKeep(desk)) === 'yes' ? words.askedYes : words.askedNo);
  return (
    <Section title={words.promise}>
      {notes.map((note) => (
        <Notice key={note.code} kind="caution" title={sayReason(note)} />
      ))}
      {forgets && (
        <Notice kind="stop" title={w.sculptures.device.forgets}>
          <p>{w.sculptures.device.forgetsWhat}</p>
        </Notice>
      )}
      <Notice
        kind={persisted === 'yes' ? 'note' : 'caution'}
        title={words.persisted[persisted]}
        actions={persisted !== 'yes' && <Button onClick={ask}>{words.ask}</Button>}
      >
        <p>{words.persistedWhat[persisted]}</p>
      </Notice>
      <p className="strong">
        {words.holds(words.entries(entries, whole(entries)), words.photos(photos, whole(photos)), bytes(health.bytes))}
      </p>
      <p className="soft">{words.unencrypted}</p>
    </Section>
  );
}
