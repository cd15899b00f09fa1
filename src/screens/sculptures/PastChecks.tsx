import type { SculptureRecord } from '../../engine/record';
import { date, w } from '../../words';
import { Section } from '../parts';

/** Checks a named person has closed: they stay readable. */
export function PastChecks({ record }: { readonly record: SculptureRecord }) {
  const closed = record.personChecks.flatMap(({ thing, body }) =>
    body.closed ? [{ thing, body, end: body.closed }] : [],
  );
  if (closed.length === 0) return null;
  return (
    <Section title={w.sculptures.check.past}>
      <ul>
        {closed.map(({ thing, body, end }) => (
          <li key={thing}>
            {w.sculptures.check.pastRow(body.what, date(body.opened), date(end.on), end.by)}
            {end.note && ` ${end.note}`}
          </li>
        ))}
      </ul>
    </Section>
  );
}
