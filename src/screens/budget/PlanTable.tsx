import { type BudgetPlan, nextStep, type Treated, type Weighed } from '../../engine/budget';
import type { Money } from '../../engine/money';
import { treatmentOf } from '../../engine/trade';
import { amounts, area, list, midSentence, money, w } from '../../words';
import { FigureText } from '../parts';
import type { BudgetAtHand } from './budgetAtHand';

const words = w.budget;
const typeName = (type: string): string => treatmentOf(type)?.name ?? type;
/** "Wash, cold wax and repair". */
const typeNames = (types: readonly string[]): string =>
  list(types.map((type, i) => (i === 0 ? typeName(type) : midSentence(typeName(type)))));

interface Row {
  readonly key: string;
  readonly head: string;
  readonly cost: Money;
  /** Missing in a row of what is paid once for a work. */
  readonly zone?: Treated;
}

/** Work by work: what is paid once for it, then its zones. */
const rowsOf = ({ done, once }: BudgetPlan, atHand: BudgetAtHand): readonly Row[] =>
  [...new Set(done.map(({ sculpture }) => sculpture))].flatMap((work) => [
    ...once
      .filter(({ sculpture }) => sculpture === work)
      .map(({ type, cost }) => ({
        key: `${work} ${type}`,
        head: words.once(atHand.workName(work), midSentence(typeName(type))),
        cost,
      })),
    ...done
      .filter(({ sculpture }) => sculpture === work)
      .map((zone) => ({ key: zone.zone, head: atHand.zoneName(zone.zone), cost: zone.cost, zone })),
  ]);

interface PlanTableProps {
  readonly plan: BudgetPlan;
  readonly sum: Money;
  readonly weighed: Weighed;
  readonly atHand: BudgetAtHand;
}

/** What the sum does: in one line, and zone by zone. */
export function PlanTable({ plan, sum, weighed, atHand }: PlanTableProps) {
  const { done, spent, taken, undone } = plan;
  const step = nextStep(weighed, sum);
  const rows = rowsOf(plan, atHand);
  const written = amounts(rows.map(({ cost }) => cost));
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
        <table className="plain-table cards budget-table">
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
            {rows.map((row, i) => (
              <tr key={row.key}>
                <th scope="row" colSpan={row.zone ? 1 : 2}>
                  {row.head}
                </th>
                {row.zone && (
                  <td data-head={words.work}>
                    <span>
                      {typeNames(row.zone.types)}
                      {row.zone.askFirst && <span className="soft"> ({words.askFirst})</span>}
                    </span>
                  </td>
                )}
                <td className="of-number" data-head={words.cost}>
                  {written[i]}
                </td>
                {row.zone ? (
                  <td className="of-number" data-head={words.loss}>
                    {words.fromTo(area(row.zone.before), area(row.zone.after))}
                  </td>
                ) : (
                  <td />
                )}
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {done.some(({ askFirst }) => askFirst) && <p className="soft">{words.who}</p>}
    </>
  );
}
