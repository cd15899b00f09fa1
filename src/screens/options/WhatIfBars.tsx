import { moneyOf } from '../../engine/money';
import type { Answer, OptionFigures, WhatIf, WhatIfs } from '../../engine/options';
import { nameOfOption, number, roundMoney, w } from '../../words';
import { Section } from '../parts';
import type { Around } from './around';
import { SpanBars } from './SpanBars';

const words = w.options;

interface WhatIfBarsProps {
  readonly told: WhatIfs;
  readonly one: OptionFigures;
  readonly around: Around;
}

/** Five bars: how far the cost of the way leaned to would move, the widest first, against the next best. */
export function WhatIfBars({ told, one, around: { options } }: WhatIfBarsProps) {
  const units = (value: number) => roundMoney(moneyOf(value, one.currency));
  const name = nameOfOption(options, one.option.thing);
  const next = nameOfOption(options, told.next.option);
  return (
    <Section title={words.whatIf} lead={words.whatIfLead[told.per](name, units(told.cost))}>
      <SpanBars
        title={words.whatIf}
        label={words.whatIfLabel}
        bars={told.bars.map(({ what, low, high }) => ({ key: what, name: words.whatIfs[what], low, high }))}
        middle={told.cost}
        mark={told.next.cost}
        text={(value) => number(Math.round(value), 0)}
        remark={words.whatIfNext(next, units(told.next.cost))}
        table={
          <table className="plain-table cards amounts-table" aria-label={words.whatIfLabel}>
            <thead>
              <tr>
                <th scope="col">{words.what}</th>
                <th scope="col" className="of-number">
                  {words.wouldCost}
                </th>
                <th scope="col" className="of-number">
                  {words.nextThen}
                </th>
                <th scope="col">{words.better}</th>
              </tr>
            </thead>
            <tbody>
              {told.bars.flatMap(({ what, answers }) =>
                answers.map((answer) => (
                  <tr key={`${what} ${answer.at}`}>
                    <th scope="row">
                      {words.whatIfs[what]}: {atText(what, answer)}
                    </th>
                    <td className="of-number" data-head={words.wouldCost}>
                      {units(answer.cost)}
                    </td>
                    <td className="of-number" data-head={words.nextThen}>
                      {units(answer.next)}
                    </td>
                    <td data-head={words.better}>
                      {answer.turnsTo ? nameOfOption(options, answer.turnsTo) : words.stays}
                    </td>
                  </tr>
                )),
              )}
            </tbody>
          </table>
        }
      />
    </Section>
  );
}

const atText = (what: WhatIf, { at }: Answer): string => {
  if (what === 'colour') return words.at.colour(at);
  if (what === 'interval') return words.at.interval(at);
  if (what === 'price') return words.at.price(at > 0);
  return words.at[what](number(Math.abs(at) * 100, 2), at > 0);
};
