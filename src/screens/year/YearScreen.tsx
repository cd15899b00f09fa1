import { w } from '../../words';
import { Button, EmptyState, LinkButton, Notice, Page, Reading, Section } from '../parts';
import { LinkLines } from '../parts/LinkLines';
import { PrintRow } from '../parts/PrintRow';
import { pathTo, say, UnderWay, useDeed, useDesk } from '../shell';
import { keepYear } from './keepYear';
import { LiftDays } from './LiftDays';
import { PeopleOfYear } from './PeopleOfYear';
import { TimeOfYear } from './TimeOfYear';
import { useYear, type YearAtHand } from './useYear';
import { Verdicts } from './Verdicts';
import { WorksOfYear } from './WorksOfYear';
import { walkPast, yearOf } from './yearRows';
import '../parts/plainTable.css';
import './year.css';

const words = w.year;

/** The desk plan of a year: what each work gets, in which order, the time, the lift, the people; and its verdict. */
export function YearScreen({ year }: { readonly year?: string | undefined }) {
  const desk = useDesk();
  const asked = Number(year);
  const shown = Number.isInteger(asked) && asked >= 1900 && asked <= 2200 ? asked : yearOf(desk.today());
  const atHand = useYear(shown);
  const back = { to: pathTo.plan(), label: words.toPlan };
  if (!atHand)
    return (
      <Page title={words.of(shown)} back={back}>
        <Reading />
      </Page>
    );
  return (
    <Page title={words.of(shown)} lead={words.lead} back={back}>
      <div className="row year-turn not-printed">
        {[shown - 1, shown + 1].map((other) => (
          <LinkButton key={other} kind="quiet" to={pathTo.year(other)}>
            {words.before(other)}
          </LinkButton>
        ))}
      </div>
      <UnderWay what="figures" />
      {atHand.rows.length === 0 ? (
        <EmptyState
          title={words.empty}
          actions={<LinkButton to={pathTo.sculptures()}>{words.toSculptures}</LinkButton>}
        >
          <p>{words.emptyWhat}</p>
        </EmptyState>
      ) : (
        <PlanOfYear atHand={atHand} />
      )}
    </Page>
  );
}

function PlanOfYear({ atHand }: { readonly atHand: YearAtHand }) {
  const desk = useDesk();
  const { run, refused, busy } = useDeed();
  const { rows, plan, year, around } = atHand;
  const whole = rows.every(({ row }) => row !== undefined);
  const works = rows.flatMap(({ row }) => row ?? []);
  const keep = (order: readonly string[], said: string) => {
    const next = order.flatMap((work) => works.find((row) => row.work === work) ?? []);
    return run(
      () => keepYear(desk, atHand, { works: next }),
      () => say(said),
    );
  };
  const names = rows.map(({ around: one }) => one.sculpture.thing);
  const placed = (around.site?.body.spots.length ?? 0) > 1;
  return (
    <>
      {refused && <Notice kind="problem" title={refused} />}
      <Section title={words.worksTitle}>
        <WorksOfYear atHand={atHand} onOrder={(order) => void keep(order, w.year.sheet.saved)} busy={busy || !whole} />
        <div className="row not-printed">
          {atHand.when !== 'over' && rows.some(({ kept }) => !kept) && (
            <Button kind="main" disabled={busy || !whole} onClick={() => keep(names, words.keptAll)}>
              {words.keepAll}
            </Button>
          )}
          {placed && (
            <Button disabled={busy || !whole} onClick={() => keep(walkPast(names, around).order, words.walkOrdered)}>
              {words.walkOrder}
            </Button>
          )}
          <LinkButton kind="quiet" to={pathTo.sitePlan()}>
            {words.sitePlan.title}
          </LinkButton>
        </div>
      </Section>
      <TimeOfYear atHand={atHand} />
      <LiftDays atHand={atHand} />
      <PeopleOfYear key={plan?.thing ?? year} atHand={atHand} />
      {atHand.when !== 'to come' && <Verdicts atHand={atHand} />}
      <div className="not-printed">
        <Section title={words.listsTitle}>
          <LinkLines
            rows={[
              { to: pathTo.packing(), name: w.plan.packing, what: w.plan.packingWhat },
              { to: pathTo.briefing(), name: w.plan.briefing, what: w.plan.briefingWhat },
              { to: pathTo.closeDown(), name: w.plan.closeDown, what: w.plan.closeDownWhat },
              { to: pathTo.budget(), name: w.plan.budget, what: w.plan.budgetWhat },
              { to: pathTo.due(), name: w.plan.due, what: w.plan.dueWhat },
            ]}
          />
        </Section>
      </div>
      <PrintRow />
    </>
  );
}
