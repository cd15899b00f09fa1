import { metalLedger } from '../../engine/care';
import type { SculptureRecord } from '../../engine/record';
import { treatmentOf } from '../../engine/trade';
import { sayReason, w, whenDone, whereDone, whoDid, workName } from '../../words';
import { EmptyState, LinkButton, Notice, Page, Reading, Section } from '../parts';
import { FigureText } from '../parts/FigureText';
import { PrintRow } from '../parts/PrintRow';
import { pathTo } from '../shell';
import { NotHere } from '../shell/NotHere';
import { useCareOf } from './careOfWork';
import '../parts/lines.css';
import '../parts/plainTable.css';

const words = w.careDay.metal;

/** Everything ever taken off a work, and which strip the next would be. */
export function LedgerScreen({ sculpture }: { readonly sculpture: string }) {
  const care = useCareOf(sculpture);
  if (care === undefined) return <Reading />;
  if (care === null) return <NotHere />;
  return <Ledger record={care.record} />;
}

function Ledger({ record }: { readonly record: SculptureRecord }) {
  const { thing: sculpture, body } = record.sculpture;
  const { lines, ofZones, most } = metalLedger(record);
  return (
    <Page
      title={words.title}
      over={workName({ body })}
      lead={words.lead}
      back={{ to: pathTo.planOfWork(sculpture), label: w.plan.ofWork.title }}
    >
      {lines.length === 0 ? (
        <EmptyState
          title={words.none}
          actions={<LinkButton to={pathTo.logbook(sculpture)}>{words.logbook}</LinkButton>}
        >
          <p>{words.noneWhat}</p>
        </EmptyState>
      ) : (
        <>
          {most > 0 && (
            <Notice kind="caution" title={words.stripped(most)}>
              <p>{words.next(words.nth(most + 1))}</p>
            </Notice>
          )}
          <table className="plain-table cards">
            <caption className="unseen">{words.title}</caption>
            <thead>
              <tr>
                {[words.when, words.how, words.where, words.m2, words.who].map((head) => (
                  <th key={head} scope="col">
                    {head}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {lines.map(({ treatment, takes, m2 }) => (
                <tr key={treatment.thing}>
                  <th scope="row">{whenDone(treatment.body)}</th>
                  <td data-head={words.how}>
                    <span>
                      {treatmentOf(treatment.body.type)?.name ?? treatment.body.type}
                      {takes === 'coating' && <span className="soft line-detail">{words.coatingOnly}</span>}
                      {treatment.body.note && <span className="line-detail">{treatment.body.note}</span>}
                    </span>
                  </td>
                  <td data-head={words.where}>{whereDone(record, treatment.body.zones)}</td>
                  <td data-head={words.m2}>
                    <span>
                      <FigureText figure={m2} as="m2" />
                      {m2?.reasons.map((reason) => (
                        <span key={reason.code} className="soft line-detail">
                          {sayReason(reason)}
                        </span>
                      ))}
                    </span>
                  </td>
                  <td data-head={words.who}>{whoDid(treatment.body) || '\u2013'}</td>
                </tr>
              ))}
            </tbody>
          </table>
          {ofZones.length > 0 && (
            <Section title={words.byZone}>
              <table className="plain-table">
                <thead>
                  <tr>
                    {[words.zone, words.times, words.nextOne].map((head) => (
                      <th key={head} scope="col">
                        {head}
                      </th>
                    ))}
                  </tr>
                </thead>
                <tbody>
                  {ofZones.map(({ zone, times }) => (
                    <tr key={zone.thing}>
                      <th scope="row">{w.sculptures.zone.edit(zone.body.letter, zone.body.name)}</th>
                      <td className="figures">{times}</td>
                      <td>{words.nth(times + 1)}</td>
                    </tr>
                  ))}
                </tbody>
              </table>
            </Section>
          )}
          <PrintRow />
        </>
      )}
    </Page>
  );
}
