import { type BudgetPlan, nextStep, type Weighed } from '../../engine/budget';
import type { Money } from '../../engine/money';
import { treatmentOf } from '../../engine/trade';
import { amounts, area, money, w } from '../../words';
import { FigureText } from '../parts';
import type { BudgetAtHand } from './budgetAtHand';

const words = w.budget;
const typeName = (type: string): string => treatmentOf(type)?.name ?? type;

interface PlanTableProps {
  readonly plan: BudgetPlan;
  readonly sum: Money;
  readonly weighed: Weighed;
  readonly atHand: BudgetAtHand;
}

/** What the sum does: in one line, and zone by zone. */
export function PlanTable({ plan, sum, weighed, atHand }: PlanTableProps) {
  const { done, once, spent, taken, undone } = plan;
  const step = nextStep(weighed, sum);
  const written = amounts([...once.map(({ cost }) => cost), ...done.map(({ cost }) => cost)]);
  return (
    <>
      {done.length === 0 ? (
        <p>{words.nothing}</p>
      ) : (
        <p className="strong">{words.inShort(money(spent), money(sum), area(taken))}</p>
      )}
      <p>
        {words.undone}: <FigureText figure={undone} as="m2" />
      </p>
      <p>{step ? words.next(money(step.more), area(step.taken)) : words.allDone}</p>
      {done.length > 0 && (
        <table className="plain-table cards">
          <thead>
            <tr>
              <th scope="col">{words.zone}</th>
              <th scope="col">{words.work}</th>
              <th scope="col" className="of-number">
                {words.cost}
              </th>
              <th scope="col" className="of-number">
                {words.loss}
              </th>
            </tr>
          </thead>
          <tbody>
            {once.map(({ sculpture, type }, i) => (
              <tr key={`${sculpture} ${type}`}>
                <th scope="row" colSpan={2}>
                  {words.once(atHand.workName(sculpture), typeName(type).toLowerCase())}
                </th>
                <td className="of-number" data-head={words.cost}>
                  {written[i]}
                </td>
                <td className="of-number" />
              </tr>
            ))}
            {done.map(({ zone, types, before, after, askFirst }, i) => (
              <tr key={zone}>
                <th scope="row">{atHand.zoneName(zone)}</th>
                <td data-head={words.work}>
                  <span>
                    {words.both(types.map(typeName))}
                    {askFirst && <span className="soft"> ({words.askFirst})</span>}
                  </span>
                </td>
                <td className="of-number" data-head={words.cost}>
                  {written[once.length + i]}
                </td>
                <td className="of-number" data-head={words.loss}>
                  {words.fromTo(area(before), area(after))}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {done.some(({ askFirst }) => askFirst) && <p className="soft">{words.who}</p>}
    </>
  );
}
