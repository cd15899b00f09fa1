import { interpretationsOf } from '../../actions';
import type { WorkHere } from '../../engine/bring';
import { w } from '../../words';
import { Section } from '../parts';
import { Thoughts } from '../parts/Thoughts';
import { useDesk, useQuestion } from '../shell';

const words = w.bring;

/** What others thought about a work, apart from all that was seen. */
export function ThoughtsSoFar({ work }: { readonly work: WorkHere }) {
  const thoughts = useQuestion(interpretationsOf(useDesk(), work.thing));
  if (!thoughts) return null;
  return (
    <Section title={words.thoughts}>
      {thoughts.length === 0 && <p className="soft">{words.noThoughts}</p>}
      <Thoughts thoughts={thoughts} zones={work.zones} />
    </Section>
  );
}
