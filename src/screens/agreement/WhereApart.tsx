import type { Agreement, Apart } from '../../engine/agreement';
import { kindOf, severityOf } from '../../engine/trade';
import { type NameOfThing, share, w } from '../../words';
import { Section } from '../parts';

const words = w.agreement;

interface WhereApartProps {
  readonly found: Agreement;
  readonly one: string;
  readonly other: string;
  readonly nameOf: NameOfThing;
}

const told = (finding: Apart['one']): string => {
  if (!finding) return words.notRecorded;
  const { coverage, severity } = finding;
  return [coverage ? share(coverage.value) : undefined, severityOf(severity).name.toLowerCase()]
    .filter((word) => word !== undefined)
    .join(', ');
};

/** Zone by zone what the two told differently: the farthest apart first. */
export function WhereApart({ found, one, other, nameOf }: WhereApartProps) {
  const { apart } = found;
  return (
    <Section title={words.apart} lead={apart.length === 0 ? words.apartNone : words.apartWhat}>
      {apart.length > 0 && (
        <table className="plain-table cards">
          <thead>
            <tr>
              <th scope="col">{words.zone}</th>
              <th scope="col">{words.kind}</th>
              <th scope="col">{one}</th>
              <th scope="col">{other}</th>
              <th scope="col">{words.differs}</th>
            </tr>
          </thead>
          <tbody>
            {apart.map((row) => (
              <tr key={`${row.zone} ${row.kind}`}>
                <th scope="row">{nameOf(row.zone) ?? words.zone}</th>
                <td data-head={words.kind}>{kindOf(row.kind)?.name ?? row.kind}</td>
                <td data-head={one}>{told(row.one)}</td>
                <td data-head={other}>{told(row.other)}</td>
                <td data-head={words.differs}>{words.why[row.why]}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </Section>
  );
}
