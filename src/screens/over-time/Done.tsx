import { dayRange, type SculptureRecord } from '../../engine/record';
import { treatmentOf } from '../../engine/trade';
import { date, w } from '../../words';
import { LinkButton, Section } from '../parts';
import { pathTo } from '../shell';

const words = w.overTime;

/** What the logbook says was done, the latest first: beside the figures, not as their cause. */
export function Done({ record, only }: { readonly record: SculptureRecord; readonly only: string | undefined }) {
  const rows = record.treatments
    .filter(({ body }) => only === undefined || body.zones.length === 0 || body.zones.includes(only))
    .map(({ thing, body }) => ({ thing, body, row: treatmentOf(body.type) }))
    .sort((a, b) => dayRange(b.body.date).to.localeCompare(dayRange(a.body.date).to));
  return (
    <Section title={words.done}>
      {rows.length === 0 ? (
        <p className="soft">{words.doneNone}</p>
      ) : (
        <ul className="done-list">
          {rows.map(({ thing, body, row }) => (
            <li key={thing}>
              {words.doneOn(date(body.date), row?.name ?? body.type)}
              {row?.breaksSeries && <span className="soft"> ({words.breaks})</span>}
            </li>
          ))}
        </ul>
      )}
      <div className="not-printed">
        <LinkButton kind="quiet" to={pathTo.logbook(record.sculpture.thing)}>
          {words.toLogbook}
        </LinkButton>
      </div>
    </Section>
  );
}
