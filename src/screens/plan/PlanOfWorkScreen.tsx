import { plannedOf, sculptureRecordOf } from '../../actions';
import { treatmentOf } from '../../engine/trade';
import { w, workName } from '../../words';
import { LinkButton, Notice, Page, Reading, Section } from '../parts';
import { LinkLines } from '../parts/LinkLines';
import { pathTo, useDesk, useQuestion } from '../shell';
import { NotHere } from '../shell/NotHere';
import { standsAt } from './standsAt';
import './plan.css';

const words = w.plan.ofWork;

/** One work from the decision to the care: where each thing is, and what is there. */
export function PlanOfWorkScreen({ sculpture }: { readonly sculpture: string }) {
  const desk = useDesk();
  const record = useQuestion(sculptureRecordOf(desk, sculpture));
  const planned = useQuestion(plannedOf(desk, sculpture));
  if (record === undefined || !planned) return <Reading />;
  if (record === null) return <NotHere />;
  const { body } = record.sculpture;
  const stands = standsAt(planned, sculpture);
  const stripped = record.treatments.filter(
    (t) => treatmentOf(t.body.type)?.breaksSeries && t.body.type !== 'cause removed',
  );
  const sheet = planned.methodSheet[0]?.body;
  return (
    <Page
      title={words.title}
      over={workName({ body })}
      back={{ to: pathTo.plan(), label: w.plan.title }}
      actions={
        <LinkButton to={pathTo.sculpture(sculpture)} size="round">
          {w.plan.ofWork.toWork}
        </LinkButton>
      }
    >
      {stands && <Notice title={stands} />}
      <div className="plan-columns">
        <Section title={words.decide}>
          <LinkLines
            rows={[
              { to: pathTo.options(sculpture), name: words.options, what: words.optionsWhat(planned.option.length) },
              {
                to: pathTo.decisions(sculpture),
                name: words.decisions,
                what: words.decisionsWhat(planned.decision.length),
              },
              {
                to: pathTo.campaigns(sculpture),
                name: words.campaigns,
                what: words.campaignsWhat(planned.campaign.length),
              },
            ]}
          />
        </Section>
        <Section title={words.care}>
          <LinkLines
            rows={[
              { to: pathTo.careDay(sculpture), name: words.careDay, what: words.careDayWhat(planned.weather.length) },
              {
                to: pathTo.methodSheet(sculpture),
                name: words.methodSheet,
                what: words.methodSheetWhat((sheet?.forbidden.length ?? 0) + (sheet?.alsoForbidden?.length ?? 0)),
              },
              { to: pathTo.season(sculpture), name: words.season, what: words.seasonWhat },
              { to: pathTo.metalLedger(sculpture), name: words.metal, what: words.metalWhat(stripped.length) },
              { to: pathTo.logbook(sculpture), name: words.logbook, what: words.logbookWhat(record.treatments.length) },
            ]}
          />
        </Section>
        <Section title={words.prepare}>
          <LinkLines
            rows={[
              {
                to: pathTo.access(sculpture),
                name: words.access,
                what: words.accessWhat(planned.accessSheet.length > 0),
              },
              { to: pathTo.inserts(sculpture), name: words.inserts, what: words.insertsWhat(record.inserts.length) },
            ]}
          />
        </Section>
      </div>
    </Page>
  );
}
