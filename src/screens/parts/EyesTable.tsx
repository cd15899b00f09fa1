import type { EyesKnown, SurveyorRow } from '../../actions';
import { eyeNumbers } from '../../engine/eye';
import { number, w, whole } from '../../words';
import './plainTable.css';

const words = w.eyeCheck;

interface EyesTableProps {
  readonly people: readonly SurveyorRow[];
  readonly known: EyesKnown;
  readonly caption: string;
}

/** Each person with the error of their eye and what it rests on: zones asked again and patches of eye checks. */
export function EyesTable({ people, known, caption }: EyesTableProps) {
  return (
    <table className="plain-table cards">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">{words.person}</th>
          <th scope="col" className="of-number">
            {words.spread}
          </th>
          <th scope="col" className="of-number">
            {words.pairs}
          </th>
          <th scope="col" className="of-number">
            {words.patches}
          </th>
        </tr>
      </thead>
      <tbody>
        {people.map(({ thing, role }) => {
          const eye = known.eyes[thing];
          return (
            <tr key={thing}>
              <th scope="row">{role}</th>
              <td data-head={words.spread} className="of-number">
                {eye ? number(eye.sd, 2) : words.assumedIs(number(eyeNumbers.assumedSd.value, 2))}
              </td>
              <td data-head={words.pairs} className="of-number">
                {whole(eye?.pairs ?? 0)}
              </td>
              <td data-head={words.patches} className="of-number">
                {whole(eye?.patches ?? 0)}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
