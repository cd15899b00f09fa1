import { type SculptureRecord, visitOf, zonesAt } from '../../engine/record';
import { roundTypes } from '../../engine/trade';
import { date, w } from '../../words';
import { Section } from '../parts';

const words = w.overTime;

const states = {
  found: 'seen',
  nothing: 'seen',
  carried: 'carried',
  'not looked': 'not-looked',
} as const;

/** Round by round which zones were judged: what the figures rest on, and the honest gaps. */
export function SeenCells({ record }: { readonly record: SculptureRecord }) {
  const last = record.rounds.at(-1);
  if (!last) return null;
  const zones = zonesAt(record, last.body.date);
  return (
    <Section title={words.cells} lead={words.cellsWhat}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls sideways has to be reached by keys */}
      <section className="cells-scroll" tabIndex={0} aria-label={words.cells}>
        <table className="cells">
          <thead>
            <tr>
              <th scope="col">
                <span className="unseen">{w.charts.day}</span>
              </th>
              {zones.map(({ thing, body }) => (
                <th key={thing} scope="col">
                  <abbr title={body.name}>{body.letter}</abbr>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {record.rounds.map((round) => (
              <tr key={round.thing}>
                <th scope="row">
                  {date(round.body.date)}
                  {round.body.type !== 'annual' && (
                    <span className="soft"> {roundTypes.find(({ id }) => id === round.body.type)?.name}</span>
                  )}
                </th>
                {zones.map(({ thing }) => {
                  const state = visitOf(record, round.thing, thing)?.body.state;
                  const seen = state ? states[state] : 'not-looked';
                  return (
                    <td key={thing}>
                      <span className={`cell ${seen}`} role="img" aria-label={words.seen[seen]} />
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </Section>
  );
}
