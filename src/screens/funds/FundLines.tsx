import { type FundFigures, targetOn } from '../../engine/fund';
import { type Money, type MoneyRules, unitsOf } from '../../engine/money';
import { addDays } from '../../engine/record';
import { amounts, date, number, roundMoney, w, whole } from '../../words';
import { Section } from '../parts';
import { useDesk } from '../shell';

const words = w.funds;
const steps = ['inHand', 'pledged', 'hoped'] as const;
/** Years after the day of the prices that are always shown. */
const yearsShown = [1, 3];

/** The costs with what pays for each, and what they come to later. */
export function FundLines({ figures, rules }: { readonly figures: FundFigures; readonly rules: MoneyRules }) {
  const { fund, target, now, cover, currency } = figures;
  const { lines, priced, wanted } = fund.body;
  const today = useDesk().today();
  const shown = amounts([...lines.map(({ amount }) => amount), target]);
  const rounded = (minor: number) => whole(unitsOf({ minor, currency }));
  const paid = (minor: number) => (minor === 0 ? '–' : rounded(minor));
  const then = (day: string): Money => targetOn(target, priced, day, rules.growth);
  const risen = today > addDays(priced, 30);
  const later = [
    ...yearsShown.map((n) => ({ head: words.inYears(n), amount: then(yearsAfter(priced, n)) })),
    ...(wanted ? [{ head: words.onDay(date(wanted)), amount: then(wanted) }] : []),
  ];
  return (
    <Section title={words.target}>
      <table className="plain-table cards fund-table">
        <thead>
          <tr>
            <th scope="col">{words.line}</th>
            <th scope="col" className="of-number">
              {words.amount}
            </th>
            {risen && (
              <th scope="col" className="of-number">
                {words.today}
              </th>
            )}
            {steps.map((step) => (
              <th key={step} scope="col" className="of-number">
                {words.paidBy[step]}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lines.map(({ id, name }, i) => (
            <tr key={id}>
              <th scope="row">{name}</th>
              <td className="of-number" data-head={words.amount}>
                {shown[i]}
              </td>
              {risen && (
                <td className="of-number" data-head={words.today}>
                  {rounded(now[i]?.amount.minor ?? 0)}
                </td>
              )}
              {steps.map((step) => (
                <td key={step} className="of-number" data-head={words.paidBy[step]}>
                  {paid(cover.lines.get(id)?.[step] ?? 0)}
                </td>
              ))}
            </tr>
          ))}
          <tr className="fund-sum">
            <th scope="row">{words.sum}</th>
            <td className="of-number" data-head={words.amount}>
              {shown.at(-1)}
            </td>
            {risen && (
              <td className="of-number" data-head={words.today}>
                {rounded(then(today).minor)}
              </td>
            )}
            {steps.map((step) => (
              <td key={step} className="of-number" data-head={words.paidBy[step]}>
                {paid(cover[step])}
              </td>
            ))}
          </tr>
        </tbody>
      </table>
      {risen && <p className="soft">{words.todayWhat(number(rules.growth * 100, 1))}</p>}
      <table className="plain-table fund-later">
        <caption>
          {words.later} <span className="soft fund-aside">{words.laterWhat(number(rules.growth * 100, 1))}</span>
        </caption>
        <tbody>
          {later.map(({ head, amount }) => (
            <tr key={head}>
              <th scope="row">{head}</th>
              <td className="of-number">{roundMoney(amount)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Section>
  );
}

const yearsAfter = (day: string, n: number): string => `${Number(day.slice(0, 4)) + n}${day.slice(4)}`;
