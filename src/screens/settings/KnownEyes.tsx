import { eyesOf, surveyors } from '../../actions';
import { w } from '../../words';
import { LinkButton, Section } from '../parts';
import { EyesTable } from '../parts/EyesTable';
import { pathTo, useDesk, useQuestion } from '../shell';

const words = w.eyeCheck;

/** How far the eye of each person is known, and the way to an eye check. */
export function KnownEyes() {
  const desk = useDesk();
  const people = useQuestion(surveyors(desk));
  const known = useQuestion(eyesOf(desk));
  if (!people || !known || people.length === 0) return null;
  return (
    <Section
      title={words.inSettings}
      lead={words.inSettingsWhat}
      actions={<LinkButton to={pathTo.eyeCheck()}>{words.toCheck}</LinkButton>}
    >
      <EyesTable people={people} known={known} caption={words.methodEyes} />
    </Section>
  );
}
