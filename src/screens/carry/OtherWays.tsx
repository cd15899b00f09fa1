import { w } from '../../words';
import { LinkButton, Section } from '../parts';
import { pathTo } from '../shell';

const words = w.carry;

/** What is not one file carried by hand: a shared folder, lists and old photos, and how safely all of it lies here. */
export function OtherWays() {
  return (
    <Section title={words.otherWays}>
      <div className="row">
        <LinkButton to={pathTo.inStep()}>{w.inStep.title}</LinkButton>
        <LinkButton to={pathTo.bring()}>{w.bring.title}</LinkButton>
        <LinkButton to={pathTo.papers()}>{w.paperHub.link}</LinkButton>
        <LinkButton to={pathTo.keeping()}>{w.keeping.title}</LinkButton>
      </div>
    </Section>
  );
}
