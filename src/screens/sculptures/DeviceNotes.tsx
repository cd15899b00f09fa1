import { storageHealth } from '../../actions';
import { w } from '../../words';
import { Notice, Section } from '../parts';
import { useDesk, useQuestion } from '../shell';
import { asksForHomeScreen } from './homeScreen';

const words = w.sculptures.device;

/** What to know of this device before the first entry: once, short, where it matters. */
export function DeviceNotes() {
  const health = useQuestion(storageHealth(useDesk()));
  return (
    <Section title={words.title}>
      {health?.secure === false && (
        <Notice kind="caution" title={words.insecure}>
          <p>{words.insecureWhat}</p>
        </Notice>
      )}
      {asksForHomeScreen(navigator, matchMedia('(display-mode: standalone)').matches) && (
        <Notice kind="caution" title={words.install}>
          <p>{words.installWhat}</p>
        </Notice>
      )}
      {health?.forgets && (
        <Notice kind="stop" title={words.forgets}>
          <p>{words.forgetsWhat}</p>
        </Notice>
      )}
      <Notice title={words.unencrypted}>
        <p>{words.unencryptedWhat}</p>
        {health?.persisted !== 'yes' && <p>{words.notPrivate}</p>}
      </Notice>
    </Section>
  );
}
