import { interpretationsOf } from '../../actions';
import type { SculptureRecord } from '../../engine/record';
import { w } from '../../words';
import { LinkButton, Section } from '../parts';
import { Thoughts } from '../parts/Thoughts';
import { pathTo, useDesk, useQuestion } from '../shell';

/** What was thought about the work: below all that was seen, and in a part of its own. Nothing where there is none. */
export function ThoughtOfWork({ record }: { readonly record: SculptureRecord }) {
  const thoughts = useQuestion(interpretationsOf(useDesk(), record.sculpture.thing));
  if (!thoughts || thoughts.length === 0) return null;
  const zones = record.zones.map(({ thing, body: { letter, name } }) => ({ thing, letter, name }));
  return (
    <Section title={w.bring.thought}>
      <Thoughts thoughts={thoughts} zones={zones} />
      <div className="row not-printed">
        <LinkButton kind="quiet" to={pathTo.conservatorPage(record.sculpture.thing)}>
          {w.paperConservator.form.link}
        </LinkButton>
      </div>
    </Section>
  );
}
