import { moneyOf } from '../../engine/money';
import { onceOff, priceOfWaiting, treatedArea } from '../../engine/options';
import { currency as currencyWord, nameOfOption, number, roundMoney, w } from '../../words';
import { Section } from '../parts';
import { Reasons } from '../parts/Reasons';
import type { Around } from './around';

const words = w.options;

/** What it costs to wait one year, or three, with each treatment that is paid for once: rise, care meanwhile and more green, each by itself. */
export function WaitingPrice({ around }: { readonly around: Around }) {
  const { rows, options, record, names, rules, situation } = around;
  const once = rows.filter(({ option }) => onceOff(option.body, rules).length > 0);
  const care = options.find(({ body }) => body.sort === 'keep waxing' && body.costs.length > 0);
  const today = situation?.today ?? '';
  return (
    <Section title={words.waiting}>
      {once.length === 0 && <p>{words.waitingNone}</p>}
      {once.map(({ option, currency }) => {
        const area = treatedArea(
          { record, today: today || record.rounds.at(-1)?.body.date || '9999-12-31' },
          option.body.zones,
        );
        const told = priceOfWaiting(
          {
            option: option.body,
            care: care && care !== option ? { thing: care.thing, option: care.body } : undefined,
            growth: situation?.growth?.perYear ?? null,
            area: area.m2,
            whole: area.whole,
          },
          rules,
        );
        if (!told) return null;
        const name = nameOfOption(options, option.thing);
        const units = (value: number) => number(Math.round(value), 0);
        return (
          <div key={option.thing} className="stack">
            <p>{words.waitingLead(name, roundMoney(moneyOf(told.now, currency)))}</p>
            <table className="plain-table cards amounts-table">
              <caption>{words.waitingCaption(name, currencyWord(currency))}</caption>
              <thead>
                <tr>
                  <th scope="col">{words.wait}</th>
                  {[words.priceThen, words.rise, words.careMeanwhile, words.greenGrows, words.extra].map((head) => (
                    <th key={head} scope="col" className="of-number">
                      {head}
                    </th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {told.waits.map(({ years, price, rise, care: paid, growth, extra }) => (
                  <tr key={years}>
                    <th scope="row">{words.waits(years)}</th>
                    <td className="of-number" data-head={words.priceThen}>
                      {units(price)}
                    </td>
                    <td className="of-number" data-head={words.rise}>
                      {units(rise)}
                    </td>
                    <td className="of-number" data-head={words.careMeanwhile}>
                      {units(paid)}
                    </td>
                    <td className="of-number" data-head={words.greenGrows}>
                      {units(growth.value)} <Range of={growth} />
                    </td>
                    <td className="of-number strong" data-head={words.extra}>
                      {units(extra.value)} <Range of={extra} />
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
            <Reasons reasons={told.reasons} nameOf={names} />
          </div>
        );
      })}
    </Section>
  );
}

function Range({ of: { low, high } }: { readonly of: { readonly low: number; readonly high: number } }) {
  const [least, most] = [number(Math.round(low), 0), number(Math.round(high), 0)];
  return least === most ? null : <span className="soft small option-range">{words.range(least, most)}</span>;
}
