import type { Thing } from '../../engine/record';
import { date, w } from '../../words';
import { LongList } from './LongList';
import './thoughts.css';

const words = w.bring;

interface ThoughtsProps {
  readonly thoughts: readonly Thing<'interpretation'>[];
  readonly zones: readonly { readonly thing: string; readonly letter: string; readonly name: string }[];
}

/** What was thought about a work, by whom and when, apart from all that was seen. */
export function Thoughts({ thoughts, zones }: ThoughtsProps) {
  return (
    <LongList
      rows={thoughts}
      className="thoughts"
      show={({ thing, body }) => {
        const zone = zones.find((each) => each.thing === body.about);
        return (
          <li key={thing}>
            <p className="file-name">{body.statement}</p>
            <p className="soft small file-name">
              {words.thoughtBy(body.by, date(body.date))}
              {zone && ` · ${words.zone} ${zone.letter} ${zone.name}`}
            </p>
            {body.source && <p className="soft small file-name">{words.thoughtFrom(body.source)}</p>}
          </li>
        );
      }}
    />
  );
}
