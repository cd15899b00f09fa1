import type { WalkList } from '../../actions';
import { date, w } from '../../words';
import { LinkButton, Section } from '../parts';
import { pathTo } from '../shell';

const words = w.walk;

/** What this walk has seen, which coatings the green came back on, and when the next one is due. */
export function WalkEnd({ list, today }: { readonly list: WalkList; readonly today: string }) {
  const back = list.works.flatMap(({ work, listed, rest }) =>
    [...listed, ...rest]
      .filter(({ last }) => last?.body.date === today && last.body.result === 'green')
      .map(({ zone }) => ({ zone, title: work.sculpture.body.title })),
  );
  if (list.looked === 0) return null;
  return (
    <Section title={words.done}>
      <p>{words.progress(list.looked, list.left)}</p>
      {back.length === 0 ? (
        <p>{words.endedNone}</p>
      ) : (
        <>
          <p className="strong">{words.ended(back.length)}</p>
          <ul>
            {back.map(({ zone, title }) => (
              <li key={zone.thing}>
                {title}: {w.round.zone.title(zone.body.letter, zone.body.name)}
              </li>
            ))}
          </ul>
        </>
      )}
      <p>{list.nextDue ? words.next(date(list.nextDue)) : words.nextNone}</p>
      <LinkButton to={pathTo.sculptures()} kind="main" size="round">
        {words.finish}
      </LinkButton>
    </Section>
  );
}
