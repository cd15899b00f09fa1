import { colourFormulaSource, colourNumbers } from '../../engine/colour';
import { factSaid, number, w } from '../../words';
import { Section } from '../parts';

const words = w.colour;

/** What the figures mean, in sentences. */
export function ColourKey() {
  const { justSeen, large, fewestPlacings } = colourNumbers;
  return (
    <Section title={words.key}>
      <ul className="reasons">
        {words
          .keyText({
            seen: number(justSeen.value),
            large: number(large.value),
            placings: number(fewestPlacings.value),
          })
          .map((text) => (
            <li key={text}>{text}</li>
          ))}
        <li>{factSaid(colourFormulaSource.text)}</li>
      </ul>
    </Section>
  );
}
