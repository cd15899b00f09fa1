import type { Agreement } from '../../engine/agreement';
import { share, w } from '../../words';
import { Section } from '../parts';

const words = w.agreement;

interface AgreedInShortProps {
  readonly found: Agreement;
  readonly one: string;
  readonly other: string;
}

/** The three figures in plain words, before any number with a Greek name. */
export function AgreedInShort({ found, one, other }: AgreedInShortProps) {
  const { kinds, severity, coverage, zonesBoth, zonesAll } = found;
  const all = kinds.both + kinds.onlyOne + kinds.onlyOther;
  const shift = coverage.whereOneSays20;
  return (
    <Section title={words.short}>
      <ul>
        <li>{words.zones(zonesBoth, zonesAll)}</li>
        {all === 0 ? (
          <li>{words.nothing}</li>
        ) : (
          <li>
            <span className="strong">{words.kinds(kinds.both, all)}</span>{' '}
            {kinds.onlyOne > 0 && words.onlyOne(one, kinds.onlyOne)}{' '}
            {kinds.onlyOther > 0 && words.onlyOne(other, kinds.onlyOther)}
          </li>
        )}
        {severity.n > 0 && <li>{words.severity(severity.alike, severity.n)}</li>}
        {shift && (
          <li>
            {words.coverage(
              one,
              other,
              share(shift.value),
              `${share(shift.low)} ${w.charts.lastTo} ${share(shift.high)}`,
            )}
          </li>
        )}
      </ul>
    </Section>
  );
}
