import { inStepOf } from '../../actions';
import { w } from '../../words';
import { EmptyState, LinkButton, Page, Reading, Section } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';
import { Joined } from './Joined';
import { SwitchOn } from './SwitchOn';
import { useStepping } from './useStepping';
import './inStep.css';

const words = w.inStep;

/** Keeping several tablets the same by one shared folder. */
export function InStepScreen() {
  const desk = useDesk();
  const inStep = useQuestion(inStepOf(desk));
  // Kept over switching on: the first step begins on one part of the screen and ends on the other.
  const stepping = useStepping();
  return (
    <Page title={words.title} lead={words.lead} back={{ to: pathTo.carry(), label: w.carry.title }} narrow>
      {desk.invented ? (
        <EmptyState title={words.notInvented}>
          <p>{words.notInventedWhat}</p>
        </EmptyState>
      ) : !inStep ? (
        <Reading />
      ) : inStep.joined ? (
        <Joined joined={inStep.joined} inStep={inStep} stepping={stepping} />
      ) : (
        <SwitchOn canPick={inStep.canPick} stepping={stepping} />
      )}
      <Section title={words.elsewhere} lead={words.elsewhereLead}>
        <div className="row not-printed">
          <LinkButton to={pathTo.carry()}>{w.carry.title}</LinkButton>
        </div>
      </Section>
    </Page>
  );
}
