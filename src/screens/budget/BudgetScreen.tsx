import { useState } from 'react';
import { tabs } from '../../actions';
import type { Thing } from '../../engine/record';
import { list, sayReason, w } from '../../words';
import { Choice, Choices, EmptyState, LinkButton, Notice, Page, Reading } from '../parts';
import { Fold } from '../parts/Fold';
import { PrintRow } from '../parts/PrintRow';
import { Reasons } from '../parts/Reasons';
import { pathTo, UnderWay, useDesk, useQuestion } from '../shell';
import { type BudgetAtHand, useBudget } from './budgetAtHand';
import { Prices } from './Prices';
import { SumOfYear } from './SumOfYear';
import { WorksCounted } from './WorksCounted';
import '../parts/plainTable.css';
import './budget.css';

const words = w.budget;

/** A year's money: prices, a sum to try, what it does, what is left, and how that changes with the sum. Also a paper. */
export function BudgetScreen() {
  const desk = useDesk();
  const thisYear = Number(desk.today().slice(0, 4));
  const [year, setYear] = useState(thisYear);
  const [without, setWithout] = useState<readonly string[]>([]);
  const atHand = useBudget(year, without);
  return (
    <Page title={words.title} over={String(year)} lead={words.lead} back={{ to: pathTo.plan(), label: words.back }}>
      <div className="not-printed">
        <Choice
          label={words.year}
          tiles="narrow"
          value={String(year)}
          onChange={(text) => setYear(Number(text))}
          options={[thisYear, thisYear + 1].map((n) => ({ value: String(n), label: String(n) }))}
        />
      </div>
      <UnderWay what="figures" />
      {atHand ? (
        <OfYear key={year} atHand={atHand} year={year} without={without} onWithout={setWithout} />
      ) : (
        <Reading />
      )}
    </Page>
  );
}

interface OfYearProps {
  readonly atHand: BudgetAtHand;
  readonly year: number;
  /** Works left out. */
  readonly without: readonly string[];
  readonly onWithout: (works: readonly string[]) => void;
}

function OfYear({ atHand, year, without, onWithout }: OfYearProps) {
  const mayWrite = useQuestion(tabs(useDesk())).mode === 'writing';
  const { works, workingOut, plan, plans, weighed, refused, prices } = atHand;
  if (works.length === 0)
    return workingOut ? (
      <Reading />
    ) : (
      <EmptyState title={words.empty} actions={<LinkButton to={pathTo.sculptures()}>{w.plan.toSculptures}</LinkButton>}>
        <p>{words.emptyWhat}</p>
      </EmptyState>
    );
  return (
    <>
      {!mayWrite && <p className="soft not-printed">{words.readOnly}</p>}
      <Prices plan={plan} year={year} from={pricedBefore(plans, year)} mayWrite={mayWrite} />
      {refused && <Notice kind="problem" title={sayReason(refused)} />}
      {prices.length > 0 && works.length > 1 && (
        <div className="not-printed">
          <Fold show={words.works} hide={words.howHide}>
            <Choices
              label={words.works}
              hint={words.worksWhat}
              labelUnseen
              values={works.map(({ thing }) => thing).filter((thing) => !without.includes(thing))}
              onChange={(kept) => onWithout(works.map(({ thing }) => thing).filter((thing) => !kept.includes(thing)))}
              options={works.map(({ thing, name }) => ({ value: thing, label: name }))}
            />
          </Fold>
        </div>
      )}
      {without.length > 0 && <p>{words.leftOut(list(without.map(atHand.workName)))}</p>}
      {weighed && <SumOfYear atHand={atHand} weighed={weighed} year={year} mayWrite={mayWrite} />}
      {weighed && (
        <Fold show={words.how} hide={words.howHide}>
          <Reasons reasons={weighed.reasons} />
          <WorksCounted types={prices.map(({ type }) => type)} />
        </Fold>
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
