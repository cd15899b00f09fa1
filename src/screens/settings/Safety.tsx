import { storageHealth } from '../../actions';
import { bytes, sayReason, w, whole } from '../../words';
import { LinkButton, Notice, Reading, Section } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';

const words = w.settings;

/** How safely the record lies on this device, in short; what can be done for it stands on a screen of its own. */
export function Safety() {
  const health = useQuestion(storageHealth(useDesk()));
  if (!health) return <Reading />;
  const { persisted, entries, photos, notes } = health;
  return (
    <Section title={words.safe}>
      {notes.map((note) => (
        <Notice key={note.code} kind="caution" title={sayReason(note)} />
      ))}
      <Notice kind={persisted === 'yes' ? 'note' : 'caution'} title={words.persisted[persisted]}>
        <p>{words.holds(words.entries(whole(entries)), words.photos(whole(photos)), bytes(health.bytes))}</p>
      </Notice>
      <div className="row">
        <LinkButton to={pathTo.keeping()}>{w.keeping.title}</LinkButton>
        <LinkButton to={pathTo.carry()}>{words.carryOut}</LinkButton>
      </div>
    </Section>
  );
}
