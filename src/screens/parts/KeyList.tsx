import { w } from '../../words';
import './keyList.css';

const words = w.field.keys;

/** What each key does, at the desk. */
export function KeyList() {
  return (
    <dl className="key-list">
      {words.rows.map(([keys, what]) => (
        <div key={keys}>
          <dt>{keys}</dt>
          <dd>{what}</dd>
        </div>
      ))}
    </dl>
  );
}
