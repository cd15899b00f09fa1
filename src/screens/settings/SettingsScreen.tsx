import { w } from '../../words';
import { LinkButton, Page, Section } from '../parts';
import { pathTo } from '../shell';
import { Demo } from './Demo';
import { ErasedSoFar } from './ErasedSoFar';
import { HoldAndSee } from './HoldAndSee';
import { KnownEyes } from './KnownEyes';
import { Language } from './Language';
import { NameOfCollection } from './NameOfCollection';
import { Safety } from './Safety';
import { WhoIsAtWork } from './WhoIsAtWork';

/** What this device is set to, and how safely the record lies on it. */
export function SettingsScreen() {
  return (
    <Page title={w.settings.title} lead={w.settings.lead} narrow>
      <WhoIsAtWork />
      <KnownEyes />
      <HoldAndSee />
      <Language />
      <Safety />
      <NameOfCollection />
      <ErasedSoFar />
      <Demo />
      <Section title={w.settings.about}>
        <p>{w.settings.aboutWhat}</p>
        <div className="row">
          <LinkButton to={pathTo.method()}>{w.settings.method}</LinkButton>
          <LinkButton to={pathTo.ready()}>{w.ready.link}</LinkButton>
          <LinkButton to={pathTo.place()}>{w.place.link}</LinkButton>
        </div>
      </Section>
    </Page>
  );
}
