import { type CarriedRow, sinceCarried } from '../../actions';
import { date, w, whole } from '../../words';
import { LinkButton, Notice, Reading, Section } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';

const words = w.keeping;

/** Shown at once; the rest lies in the database and is of no use to a person. */
const shown = 5;

/** What left this device, and what lies on it only. */
export function CarriedOut() {
  const since = useQuestion(sinceCarried(useDesk()));
  if (!since) return <Reading />;
  const { rounds, last, rows } = since;
  return (
    <Section title={words.carried}>
      <Notice
        kind={rounds > 0 || !last ? 'caution' : 'note'}
        title={rounds > 0 ? words.carriedSince(rounds) : last ? words.carriedAll : words.carriedNever}
        actions={<LinkButton to={pathTo.carry()}>{words.carryDo}</LinkButton>}
      >
        {rounds > 0 && last && <p>{words.carriedSinceWhat(date(last.at.slice(0, 10)))}</p>}
        {!last && <p>{words.carriedNeverWhat}</p>}
      </Notice>
      {rows.length > 0 && (
        <>
          <h3>{words.carriedList}</h3>
          <ul className="carried bare">
            {rows.slice(0, shown).map((row) => (
              <li key={`${row.at} ${row.name}`}>
                <span className="strong file-name">{row.name}</span>
                <span className="soft">
                  {date(row.at.slice(0, 10))} · {what(row)}
                  {row.sculptures && ` · ${words.carriedSome(row.sculptures.length)}`}
                </span>
              </li>
            ))}
          </ul>
        </>
      )}
    </Section>
  );
}

const what = (row: CarriedRow): string => {
  const entries = words.entries(row.entries, whole(row.entries));
  return row.what === 'bag'
    ? words.carriedRow.bag(entries, words.photos(row.photos, whole(row.photos)))
    : words.carriedRow[row.what](entries);
};
