import type { InStep } from '../../actions';
import { date, w, whole } from '../../words';
import { Section } from '../parts';

const words = w.inStep;

/** The devices that write to the folder. People stay pseudonyms here: the role of who was last at work on each. */
export function WhoIsInIt({ who }: Pick<InStep, 'who'>) {
  if (who.length === 0) return null;
  return (
    <Section title={words.who}>
      <ul className="in-step-rows bare">
        {who.map(({ here, role, at, entries }, i) => (
          <li key={`${at} ${role} ${entries}`}>
            <span className="strong">
              {here ? words.thisTablet : words.tablet(i + 1)}
              {role && ` · ${role}`}
            </span>
            <span className="soft">
              {entries === 0
                ? words.wroteNothing
                : words.wrote(words.entries(entries, whole(entries)), date(at.slice(0, 10)))}
            </span>
          </li>
        ))}
      </ul>
    </Section>
  );
}
