import { useState } from 'react';
import { editPlanned, setPlanned } from '../../actions';
import { planWithin, type Weighed } from '../../engine/budget';
import { isMoney, type Money, readMoney } from '../../engine/money';
import { nameOf } from '../../engine/record';
import { money, moneyTyped, sayReason, w } from '../../words';
import { Button, Notice, Section } from '../parts';
import { MoneyField } from '../parts/MoneyField';
import { say, useDeed, useDesk, useTyped } from '../shell';
import type { BudgetAtHand } from './budgetAtHand';
import { LeftUndone } from './LeftUndone';
import { PlanTable } from './PlanTable';
import { UndoneCurve } from './UndoneCurve';

const words = w.budget;

interface SumOfYearProps {
  readonly atHand: BudgetAtHand;
  readonly weighed: Weighed;
  readonly year: number;
  readonly mayWrite: boolean;
}

/** A sum to try, and all that follows from it; kept only where it is asked for. */
export function SumOfYear({ atHand, weighed, year, mayWrite }: SumOfYearProps) {
  const desk = useDesk();
  const { plan, lifts } = atHand;
  const { currency } = weighed;
  const kept = plan?.body.budget;
  const [text, setText] = useState(kept ? moneyTyped(kept) : '');
  const typed = useTyped(['sum of the year', String(year)], { text: [text, setText] });
  const { run, refused, busy } = useDeed(typed);
  const read = readMoney(text, currency);
  const sum = isMoney(read) ? read : undefined;
  const free = sum && lessLifts(sum, lifts);
  const found = free && planWithin(weighed, free);
  const keep = () =>
    void run(
      () =>
        plan
          ? editPlanned(desk, 'yearPlan', plan.thing, { budget: sum })
          : setPlanned(desk, 'yearPlan', nameOf.yearPlan(desk.collection, year), { year, works: [], budget: sum }),
      () => say(words.kept),
    );
  const changed = sum && (sum.minor !== kept?.minor || sum.currency !== kept.currency);
  return (
    <>
      <Section title={words.plan}>
        {typed.line}
        {refused && <Notice kind="problem" title={refused} />}
        {sum && (
          <p className="only-printed">
            {words.sum}: {money(sum)}
          </p>
        )}
        <div className="row budget-sum not-printed">
          <MoneyField
            label={words.sum}
            hint={words.sumHint}
            value={text}
            onChange={setText}
            currency={currency}
            error={text.trim() !== '' && !isMoney(read) ? sayReason(read) : undefined}
          />
          {mayWrite && changed && (
            <Button onClick={keep} disabled={busy}>
              {words.keepSum(year)}
            </Button>
          )}
        </div>
        {lifts === 'mixed' && <p>{words.liftsMixed}</p>}
        {lifts && lifts !== 'mixed' && lifts.minor > 0 && <p>{words.lifts(money(lifts))}</p>}
        {free && free.minor < 0 && <Notice kind="caution" title={words.tooSmall} />}
        {found && 'code' in found && <Notice kind="problem" title={sayReason(found)} />}
        {free && found && 'done' in found && <PlanTable plan={found} sum={free} weighed={weighed} atHand={atHand} />}
      </Section>
      {found && 'done' in found && <LeftUndone plan={found} atHand={atHand} />}
      <UndoneCurve weighed={weighed} at={free && free.minor >= 0 ? free : undefined} />
    </>
  );
}

const lessLifts = (sum: Money, lifts: BudgetAtHand['lifts']): Money =>
  lifts && lifts !== 'mixed' && lifts.currency === sum.currency
    ? { minor: sum.minor - lifts.minor, currency: sum.currency }
    : sum;
