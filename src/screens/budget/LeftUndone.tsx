import type { BudgetPlan } from '../../engine/budget';
import { area, sayReason, w } from '../../words';
import { Notice, Section } from '../parts';
import { Fold } from '../parts/Fold';
import type { BudgetAtHand } from './budgetAtHand';

const words = w.budget;
/** Rows shown before the rest is folded away. */
const first = 12;

/** Every zone with loss left in it, the most first, and why. */
export function LeftUndone({ plan, atHand }: { readonly plan: BudgetPlan; readonly atHand: BudgetAtHand }) {
  const { left } = plan;
  const stopped = left.filter(({ why }) => why.code === 'budget: stop word').length;
  const rows = (shown: BudgetPlan['left'], named: boolean) => (
    <table className="plain-table cards budget-table">
      <caption className="unseen">{words.left}</caption>
      {named && (
        <thead>
          <tr>
            <th scope="col">{words.zone}</th>
            <th scope="col" className="of-number">
              {words.m2}
            </th>
            <th scope="col">{words.why}</th>
          </tr>
        </thead>
      )}
      <tbody>
        {shown.map(({ zone, m2, why }) => (
          <tr key={zone}>
            <th scope="row">{atHand.zoneName(zone)}</th>
            <td className="of-number" data-head={words.m2}>
              {area(m2)}
            </td>
            <td data-head={words.why}>{sayReason(why)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
  return (
    <Section title={words.left} lead={left.length > 0 ? words.leftWhat(left.length) : words.leftNone}>
      {stopped > 0 && <Notice kind="stop" title={words.stopped(stopped)} />}
      {left.length > 0 && rows(left.slice(0, first), true)}
      {left.length > first && (
        <Fold show={words.more(left.length - first)} hide={words.fewer}>
          {rows(left.slice(first), false)}
        </Fold>
      )}
      {atHand.notJudged > 0 && <p>{words.notJudged(atHand.notJudged)}</p>}
    </Section>
  );
}
