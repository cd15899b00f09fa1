import { plannedAll, sculptureList } from '../../actions';
import { currency as inWords, w, workName } from '../../words';
import { EmptyState, LinkButton, Page, Reading, Section } from '../parts';
import { LinkLines } from '../parts/LinkLines';
import { pathTo, useDesk, useQuestion } from '../shell';
import { Now } from './Now';
import { standsAt } from './standsAt';
import './plan.css';

const words = w.plan;

/** The desk: what is due, each work's plan, the year, the money, the store. */
export function PlanScreen() {
  const desk = useDesk();
  const works = useQuestion(sculptureList(desk));
  const planned = useQuestion(plannedAll(desk));
  if (!works || !planned)
    return (
      <Page title={words.title} lead={words.lead}>
        <Reading />
      </Page>
    );
  const open = planned.incident.filter(({ body }) => !body.closed).length;
  const away = planned.move.filter(({ body }) => !body.back && body.sort !== 'move').length;
  const currency = planned.moneyRules[0]?.body.currency;
  return (
    <Page title={words.title} lead={words.lead}>
      <div className="plan-columns">
        <Now works={works} />
        <Section title={words.works}>
          {works.length === 0 ? (
            <EmptyState
              title={words.worksNone}
              actions={<LinkButton to={pathTo.sculptures()}>{words.toSculptures}</LinkButton>}
            />
          ) : (
            <LinkLines
              rows={works.map(({ thing, body }) => ({
                to: pathTo.planOfWork(thing),
                name: workName({ body }),
                what: standsAt(planned, thing) ?? words.noPlan,
              }))}
            />
          )}
        </Section>
        <Section title={words.ofYear}>
          <LinkLines
            rows={[
              { to: pathTo.year(), name: words.year, what: words.yearWhat },
              { to: pathTo.sitePlan(), name: words.sitePlan, what: words.sitePlanWhat },
              { to: pathTo.packing(), name: words.packing, what: words.packingWhat },
              { to: pathTo.briefing(), name: words.briefing, what: words.briefingWhat },
              { to: pathTo.closeDown(), name: words.closeDown, what: words.closeDownWhat },
            ]}
          />
        </Section>
        <Section title={w.paperHub.title}>
          <LinkLines
            rows={[
              { to: pathTo.papers(), name: w.paperHub.link, what: w.paperHub.linkWhat },
              { to: pathTo.kept(), name: w.paperHub.kept.link, what: w.paperHub.kept.what },
            ]}
          />
        </Section>
        <Section title={words.money}>
          <LinkLines
            rows={[
              { to: pathTo.budget(), name: words.budget, what: words.budgetWhat },
              { to: pathTo.funds(), name: words.funds, what: words.fundsWhat(planned.fund.length) },
              { to: pathTo.decisions(), name: words.decisions, what: words.decisionsWhat(planned.decision.length) },
              { to: pathTo.money(), name: words.rules, what: words.rulesWhat(currency && inWords(currency)) },
            ]}
          />
        </Section>
        <Section title={words.store}>
          <LinkLines
            rows={[
              { to: pathTo.incidents(), name: words.incidents, what: words.incidentsWhat(open) },
              { to: pathTo.products(), name: words.products, what: words.productsWhat(planned.product.length) },
              {
                to: pathTo.grounds(),
                name: words.grounds,
                what: words.groundsWhat(planned.groundsAgreement.filter(({ body }) => !body.ended).length),
              },
              { to: pathTo.moves(), name: words.moves, what: words.movesWhat(away) },
            ]}
          />
        </Section>
      </div>
    </Page>
  );
}
