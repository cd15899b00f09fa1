import { eyesOf, surveyors } from '../../actions';
import { eyeNumbers } from '../../engine/eye';
import { factSaid, number, w } from '../../words';
import { LinkButton, Section } from '../parts';
import { EyesTable } from '../parts/EyesTable';
import { pathTo, useDesk, useQuestion } from '../shell';
import { RowsTable } from './RowsTable';
import { Rules } from './Rules';

const words = w.eyeCheck;

/** How the error of one person becomes known, the numbers it rests on, and what it came to for each. */
export function ErrorOfAnEye() {
  const desk = useDesk();
  const people = useQuestion(surveyors(desk));
  const known = useQuestion(eyesOf(desk));
  return (
    <Section
      title={words.method}
      actions={
        <span className="not-printed">
          <LinkButton to={pathTo.eyeCheck()}>{words.toCheck}</LinkButton>
        </span>
      }
    >
      <Rules rules={words.methodText} />
      {people && known && Object.keys(known.eyes).length > 0 ? (
        <EyesTable people={people} known={known} caption={words.methodEyes} />
      ) : (
        <p className="soft">{words.methodNoEyes}</p>
      )}
      <RowsTable
        caption={words.methodNumbers}
        heads={[w.method.errorColumns.what, w.method.errorColumns.value, w.method.errorColumns.source]}
        figures={[1]}
        rows={Object.entries(eyeNumbers).map(([key, { value, what, source }]) => ({
          key,
          cells: [factSaid(what), number(value, 2), factSaid(source.text)],
        }))}
      />
    </Section>
  );
}
