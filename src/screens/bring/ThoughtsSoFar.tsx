import { interpretationsOf } from '../../actions';
import type { WorkHere } from '../../engine/bring';
import { date, w } from '../../words';
import { Section } from '../parts';
import { LongList } from '../parts/LongList';
import { useDesk, useQuestion } from '../shell';

const words = w.bring;

/** What others thought about a work, apart from all that was seen. */
export function ThoughtsSoFar({ work }: { readonly work: WorkHere }) {
  const thoughts = useQuestion(interpretationsOf(useDesk(), work.thing));
  if (!thoughts) return null;
  return (
    <Section title={words.thoughts}>
      {thoughts.length === 0 && <p className="soft">{words.noThoughts}</p>}
      <LongList
        rows={thoughts}
        className="bring-rows"
        show={({ thing, body }) => {
          const zone = work.zones.find((each) => each.thing === body.about);
          return (
            <li key={thing}>
              <p className="bring-cell">{body.statement}</p>
              <p className="soft small bring-cell">
                {words.thoughtBy(body.by, date(body.date))}
                {zone && ` · ${words.zone} ${zone.letter} ${zone.name}`}
              </p>
              {body.source && <p className="soft small bring-cell">{words.thoughtFrom(body.source)}</p>}
            </li>
          );
        }}
      />
    </Section>
  );
}
