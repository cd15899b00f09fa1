import {
  categorySource,
  depositionSource,
  inputRangesSource,
  metals,
  powerUntilSource,
  uncertaintySource,
} from '../../engine/site';
import { factSaid, w } from '../../words';
import { Section } from '../parts';

const words = w.place;

/** What each figure rests on, and how far that was checked. */
export function AirSources() {
  const rows = [
    ...metals.map(({ source }) => source),
    categorySource,
    inputRangesSource,
    uncertaintySource,
    powerUntilSource,
    depositionSource,
  ];
  return (
    <Section title={words.sources}>
      <ul className="reasons">
        {rows.map(({ text }) => (
          <li key={text}>{factSaid(text)}.</li>
        ))}
      </ul>
    </Section>
  );
}
