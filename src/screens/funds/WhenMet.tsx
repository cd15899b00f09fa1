import { courseFrom, type FundFigures, levels, savingsOf } from '../../engine/fund';
import type { Money, MoneyRules } from '../../engine/money';
import { date, list, money, number, roundMoney, w } from '../../words';
import { Section } from '../parts';
import { useDesk } from '../shell';
import { FundCurve } from './FundCurve';

const words = w.funds;

/** When the fund meets a target that rises with prices, drawn and in words, and what to lay by for a day. */
export function WhenMet({ figures, rules }: { readonly figures: FundFigures; readonly rules: MoneyRules }) {
  const desk = useDesk();
  const { fund, gifts, currency } = figures;
  const { wanted } = fund.body;
  const course = courseFrom(figures, rules, desk.today());
  const undated = course.undated.flatMap((place) => gifts[place]?.body.who ?? []);
  return (
    <Section title={words.when}>
      <FundCurve course={course} currency={currency} wanted={wanted} />
      <dl className="fund-facts">
        {levels.map((level) => {
          const day = course.meets[level];
          return (
            <div key={level}>
              <dt>{words.meets[level]}</dt>
              <dd className="strong">
                {day === null
                  ? words.never(rules.years)
                  : day === course.months[0]?.day
                    ? words.metNow
                    : words.meetsOn(date(day.slice(0, 7)))}
              </dd>
            </div>
          );
        })}
      </dl>
      {undated.length > 0 && <p>{words.undated(list([...new Set(undated)]))}</p>}
      <p className="soft">{words.noInterest}</p>
      <h3>{words.saving}</h3>
      {wanted ? <Savings figures={figures} rules={rules} wanted={wanted} /> : <p>{words.noWanted}</p>}
    </Section>
  );
}

interface SavingsProps {
  readonly figures: FundFigures;
  readonly rules: MoneyRules;
  readonly wanted: string;
}

function Savings({ figures, rules, wanted }: SavingsProps) {
  const savings = savingsOf(figures, rules, useDesk().today(), wanted);
  const { yearly } = figures.fund.body;
  if (!savings) return <p>{words.past}</p>;
  const said = (without: Money, withInterest: Money): string => {
    if (without.minor === 0) return words.savingNothing;
    if (savings.inHand.years < 1) return words.savingOnce(money(without));
    return words.savingIs(roundMoney(without), roundMoney(withInterest), number(rules.rate * 100, 1));
  };
  return (
    <>
      <p>{words.savingOf(roundMoney(savings.inHand.target), date(wanted))}</p>
      <dl className="fund-facts">
        <div>
          <dt>{words.savingInHand}</dt>
          <dd className="strong figures">{said(savings.inHand.without, savings.inHand.withInterest)}</dd>
        </div>
        <div>
          <dt>{words.savingPledged}</dt>
          <dd className="strong figures">{said(savings.pledged.without, savings.pledged.withInterest)}</dd>
        </div>
      </dl>
      {yearly && savings.inHand.years >= 1 && <p>{words.savingYearly(money(yearly))}</p>}
    </>
  );
}
