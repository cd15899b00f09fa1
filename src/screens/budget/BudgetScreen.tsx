import { useState } from 'react';
import { tabs } from '../../actions';
import type { Thing } from '../../engine/record';
import { sayReason, w } from '../../words';
import { Choice, EmptyState, Notice, Page, Reading } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { Reasons } from '../parts/Reasons';
import { pathTo, UnderWay, useDesk, useQuestion } from '../shell';
import { type BudgetAtHand, useBudget } from './budgetAtHand';
import { Prices } from './Prices';
import { SumOfYear } from './SumOfYear';
import '../parts/plainTable.css';
import './budget.css';

const words = w.budget;

/** A year's money: prices, a sum to try, what it does, what is left, and how that changes with the sum. Also a paper. */
export function BudgetScreen() {
  const desk = useDesk();
  const thisYear = Number(desk.today().slice(0, 4));
  const [year, setYear] = useState(thisYear);
  const atHand = useBudget(year);
  return (
    <Page title={words.title} lead={words.lead} back={{ to: pathTo.plan(), label: words.back }}>
      <Choice
        label={words.year}
        tiles="narrow"
        value={String(year)}
        onChange={(text) => setYear(Number(text))}
        options={[thisYear, thisYear + 1].map((n) => ({ value: String(n), label: String(n) }))}
      />
      <UnderWay what="figures" />
      {atHand ? <OfYear key={year} atHand={atHand} year={year} /> : <Reading />}
    </Page>
  );
}

function OfYear({ atHand, year }: { readonly atHand: BudgetAtHand; readonly year: number }) {
  const mayWrite = useQuestion(tabs(useDesk())).mode === 'writing';
  const { rounds, workingOut, plan, plans, weighed, refused, prices } = atHand;
  if (rounds === 0)
    return workingOut ? (
      <Reading />
    ) : (
      <EmptyState title={words.empty}>
        <p>{words.emptyWhat}</p>
      </EmptyState>
    );
  return (
    <>
      {!mayWrite && <p className="soft not-printed">{words.readOnly}</p>}
      <Prices plan={plan} year={year} from={pricedBefore(plans, year)} mayWrite={mayWrite} />
      {refused && <Notice kind="problem" title={sayReason(refused)} />}
      {weighed && <SumOfYear atHand={atHand} weighed={weighed} year={year} mayWrite={mayWrite} />}
      {weighed && (
        <details className="not-printed">
          <summary>{words.how}</summary>
          <Reasons reasons={weighed.reasons} />
        </details>
      )}
      {prices.length > 0 && <PrintRow />}
    </>
  );
}

/** The latest other year that has prices. */
const pricedBefore = (plans: readonly Thing<'yearPlan'>[], year: number): Thing<'yearPlan'> | undefined =>
  plans
    .filter(({ body }) => body.year !== year && (body.prices?.length ?? 0) > 0)
    .sort((a, b) => b.body.year - a.body.year)[0];
