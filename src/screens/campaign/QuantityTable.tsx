import type { QuantityLine } from '../../engine/campaign';
import { reaches } from '../../engine/trade';
import { amountText, namesOfCampaign, number, taskName, w } from '../../words';
import { Button } from '../parts';
import type { OpenFile } from './OfCampaign';
import { SmallPhoto } from './SmallPhoto';
import '../parts/plainTable.css';

const words = w.campaign.quantities;

interface QuantityTableProps {
  readonly file: OpenFile;
  readonly lines: readonly QuantityLine[];
  readonly onEdit: (line: QuantityLine) => void;
}

/** Lines as they go out: no prices of our own, a place for theirs on paper. */
export function QuantityTable({ file, lines, onEdit }: QuantityTableProps) {
  const names = namesOfCampaign(file);
  const { columns } = words;
  return (
    <table className="plain-table cards quantity-table">
      <caption>{words.caption}</caption>
      <thead>
        <tr>
          <th scope="col">{columns.number}</th>
          <th scope="col">{columns.what}</th>
          <th scope="col">{columns.amount}</th>
          <th scope="col">{columns.reach}</th>
          <th scope="col">{columns.seen}</th>
          <th scope="col" className="only-printed">
            {columns.price}
          </th>
          <td className="not-printed" />
        </tr>
      </thead>
      <tbody>
        {lines.map((line, i) => (
          <tr key={line.id}>
            <td data-head={columns.number} className="figures">
              {i + 1}
            </td>
            <th scope="row">
              {line.name}
              {taskName(line.task) !== line.name && <span className="soft line-detail">{taskName(line.task)}</span>}
            </th>
            <td data-head={columns.amount} className="figures">
              <div>
                <span className="strong">{amountText(line)}</span>
                {line.low !== undefined && line.high !== undefined && (
                  <span className="soft line-detail">{words.between(number(line.low), number(line.high))}</span>
                )}
              </div>
            </td>
            <td data-head={columns.reach}>{reaches.find(({ id }) => id === line.reach)?.name ?? line.reach}</td>
            <td data-head={columns.seen} className="seen-cell">
              <div className="stack tight">
                {line.condition && <span>{line.condition}</span>}
                {line.inserts && line.inserts.length > 0 && (
                  <span>{words.near(line.inserts.map((insert) => names(insert) ?? w.parts.notKnown))}</span>
                )}
                {line.note && <span className="soft">{line.note}</span>}
                {line.photo && <SmallPhoto photo={line.photo} alt={words.photoOf(line.name)} />}
              </div>
            </td>
            <td className="only-printed price-cell" />
            <td className="not-printed">
              <Button kind="quiet" aria-label={words.edit(line.name)} onClick={() => onEdit(line)}>
                {words.change}
              </Button>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
