import { Fragment } from 'react';
import { moneyOf } from '../../engine/money';
import { type AtRate, priceSpread, sideBySide } from '../../engine/options';
import type { Reason } from '../../engine/record';
import { nameOfOption, number, roundMoney, sayReason, share, w } from '../../words';
import { LinkButton, Section } from '../parts';
import { Reasons } from '../parts/Reasons';
import { pathTo } from '../shell';
import type { Around } from './around';

const words = w.options;

/** Worth today, yearly cost and cost per good month of each way, at three rates, with the sentences that must not be overlooked. */
export function SideBySide({ around }: { readonly around: Around }) {
  const { rows, options, names, rules } = around;
  const said = sideBySide(rows);
  // What all rest on is said once.
  const isOfAll = (reason: Reason) =>
    rows.every(({ reasons }) => reasons.some((other) => sayReason(other, names) === sayReason(reason, names)));
  const ofAll = rows[0]?.reasons.filter(isOfAll) ?? [];
  return (
    <Section title={words.side} lead={words.sideLead(rules.years)}>
      <table className="plain-table cards amounts-table option-table" aria-label={words.sideCaption}>
        <thead>
          <tr>
            <th scope="col">{words.rate}</th>
            <th scope="col" className="of-number">
              {words.present}
            </th>
            <th scope="col" className="of-number">
              {words.yearly}
            </th>
            <th scope="col" className="of-number">
              {words.perMonth}
            </th>
          </tr>
        </thead>
        {rows.map(({ option, currency, atRates }) => (
          <tbody key={option.thing}>
            <tr>
              <th scope="rowgroup" colSpan={4}>
                {nameOfOption(options, option.thing)}
              </th>
            </tr>
            {atRates.map((at) => (
              <tr key={at.rate} className={at === atRates[1] ? 'rate-set' : undefined}>
                <th scope="row">
                  {words.percent(number(at.rate * 100, 2))}
                  {at === atRates[1] && <span className="soft small option-sort"> {words.asSet}</span>}
                </th>
                <td className="of-number" data-head={words.present}>
                  <Spread of={at.present} currency={currency} />
                </td>
                <td className="of-number" data-head={words.yearly}>
                  <Spread of={at.yearly} currency={currency} />
                </td>
                <td className="of-number" data-head={words.perMonth}>
                  {at.perGoodMonth ? <Spread of={at.perGoodMonth} currency={currency} /> : w.parts.notKnown}
                </td>
              </tr>
            ))}
          </tbody>
        ))}
      </table>
      <Reasons reasons={said} nameOf={names} label={words.side} />
      <p className="soft small">
        {words.pricesAre}{' '}
        {words.spread(
          share(priceSpread.quote.value),
          share(priceSpread.estimate.value),
          share(priceSpread['made up'].value),
        )}
      </p>
      <div>
        <Reasons reasons={ofAll} nameOf={names} label={words.assumptions} />
        {rows
          .map(({ option, reasons }) => ({ option, own: reasons.filter((reason) => !isOfAll(reason)) }))
          .filter(({ own }) => own.length > 0)
          .map(({ option, own }) => (
            <Fragment key={option.thing}>
              <p className="strong small">{nameOfOption(options, option.thing)}</p>
              <Reasons reasons={own} nameOf={names} />
            </Fragment>
          ))}
      </div>
      <div className="not-printed">
        <LinkButton kind="quiet" to={pathTo.money()}>
          {words.toRules}
        </LinkButton>
      </div>
    </Section>
  );
}

interface SpreadProps {
  readonly of: AtRate['yearly'] | NonNullable<AtRate['perGoodMonth']>;
  readonly currency: string;
}

/** A figure in whole units with its range under it. */
export function Spread({ of: { value, low, high }, currency }: SpreadProps) {
  const whole = (units: number) => number(Math.round(units), 0);
  const range = high === null ? words.andMore(whole(low)) : words.range(whole(low), whole(high));
  return (
    <span>
      <span className="strong">{roundMoney(moneyOf(value, currency))}</span>{' '}
      {low !== high && <span className="soft small option-range">{range}</span>}
    </span>
  );
}
