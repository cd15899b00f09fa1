import type { WatchOfCampaign } from '../../actions';
import type { MonthsHeld, WatchMark } from '../../engine/watch';
import { date, number, sayReason, w } from '../../words';
import { Section } from './Page';
import './lines.css';
import './plainTable.css';

const words = w.due.watch;

const monthsText = ({ low, high }: MonthsHeld): string =>
  words.monthsHeld(number(low, 1), high === null ? '' : number(high, 1));

const stateText = ({ state, on, day, from }: WatchMark): string =>
  words.state[state](date(state === 'done' ? (on ?? day) : state === 'to come' ? from : day));

/** After a campaign: when it was and will be looked at, what held, and what was promised beside it. */
export function AfterCampaign({ watch }: { readonly watch: WatchOfCampaign }) {
  const { ended, marks, held, promise, goodMonths, recall, zones } = watch;
  const zoneName = (zone: string): string => {
    const body = zones.get(zone);
    return body ? w.sculptures.zone.edit(body.letter, body.name) : w.decisions.zoneGone;
  };
  if (ended === null)
    return (
      <Section title={words.title}>
        <p className="soft">{words.notOver}</p>
      </Section>
    );
  return (
    <Section title={words.title} lead={words.ended(date(ended))}>
      {recall && recall.zones.length > 0 && (
        <>
          <p className="strong">{w.due.recallUntil(date(recall.until))}</p>
          <ul>
            {recall.zones.map(({ zone, firstSeen }) => (
              <li key={zone}>{w.due.recallBack(zoneName(zone), date(firstSeen))}</li>
            ))}
          </ul>
        </>
      )}
      <table className="plain-table cards">
        <caption>{words.plan}</caption>
        <thead>
          <tr>
            <th scope="col">{words.tableAfter}</th>
            <th scope="col">{words.tableDay}</th>
            <th scope="col">{words.tableState}</th>
          </tr>
        </thead>
        <tbody>
          {marks.map((mark) => (
            <tr key={mark.months}>
              <th scope="row">{words.months(mark.months)}</th>
              <td data-head={words.tableDay}>{date(mark.day)}</td>
              <td data-head={words.tableState}>{stateText(mark)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <Held held={held} zoneName={zoneName} />
      <p className="strong">{words.promise}</p>
      {promise && <p>{promise}</p>}
      {goodMonths && (
        <p>{words.goodMonths(number(goodMonths.value, 1), number(goodMonths.low, 1), number(goodMonths.high, 1))}</p>
      )}
      {!promise && !goodMonths && <p className="soft">{words.noPromise}</p>}
    </Section>
  );
}

function Held({
  held,
  zoneName,
}: {
  readonly held: WatchOfCampaign['held'];
  readonly zoneName: (zone: string) => string;
}) {
  if (held.length === 0) return <p className="soft">{words.heldNone}</p>;
  return (
    <>
      <table className="plain-table cards">
        <caption>{words.held}</caption>
        <thead>
          <tr>
            <th scope="col">{words.zone}</th>
            <th scope="col">{words.since}</th>
            <th scope="col">{words.before}</th>
            <th scope="col">{words.verdict}</th>
          </tr>
        </thead>
        <tbody>
          {held.map(({ zone, since, before, word, reasons }) => (
            <tr key={zone}>
              <th scope="row">{zoneName(zone)}</th>
              <td data-head={words.since}>
                <span>
                  {since ? monthsText(since) : words.notTold}
                  <span className="line-detail soft small"> {reasons[0] && sayReason(reasons[0])}</span>
                </span>
              </td>
              <td data-head={words.before}>{before.length > 0 ? before.map(monthsText).join('; ') : words.notTold}</td>
              <td data-head={words.verdict}>{words.word[word]}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="soft small">{words.heldWhat}</p>
    </>
  );
}
