import { dueThings, type SculptureRow, tripwiresMet } from '../../actions';
import { namesOfWorks, w } from '../../words';
import { Section } from '../parts';
import { LinkLines } from '../parts/LinkLines';
import { TripwiresMet } from '../parts/TripwiresMet';
import { pathTo, UnderWay, useDesk, useQuestion } from '../shell';

const words = w.plan;

/** What asks for her now: a tripwire that went, and how much is due. */
export function Now({ works }: { readonly works: readonly SculptureRow[] }) {
  const desk = useDesk();
  const wires = useQuestion(tripwiresMet(desk));
  const things = useQuestion(dueThings(desk));
  const many = (...when: readonly string[]) => things?.due.filter((due) => when.includes(due.when)).length ?? 0;
  return (
    <Section title={words.now}>
      <UnderWay what="figures" />
      {wires && <TripwiresMet open={wires.open} names={namesOfWorks(works, wires.zones)} to={pathTo.decisions()} />}
      <LinkLines
        rows={[
          { to: pathTo.due(), name: words.due, what: things && words.dueMany(many('over'), many('now'), many('soon')) },
        ]}
      />
    </Section>
  );
}
