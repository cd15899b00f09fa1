import { describe, expect, it } from 'vitest';
import { overtakesIn } from '../../src/engine/money';
import {
  bestBuy,
  figuresAgainst,
  figuresOf,
  isReckoned,
  type OptionFigures,
  overtaking,
  priceOfWaiting,
  sideBySide,
} from '../../src/engine/options';
import { rules, stripAll, waxAndLocal, waxOnly } from '../engine/options/halfTideStair';

const reckoned = [waxOnly, waxAndLocal, stripAll].map((option) => figuresOf(option, rules) as OptionFigures);
const [a, b, c] = reckoned as [OptionFigures, OptionFigures, OptionFigures];
const codes = (reasons: readonly { readonly code: string }[]) => reasons.map(({ code }) => code);

describe('The options table of the invented work, at 3 % over 20 years, to the unit', () => {
  it.each([
    ['yearly wax only', a, 4442, 3, 1481, 0],
    ['wax and local treatment every second year', b, 7585, 7, 1084, 10],
    ['strip, hot patina, then yearly wax', c, 7361, 10, 736, 1],
  ] as const)('%s', (_, figures, yearly, months, perMonth, irreversible) => {
    expect(isReckoned(figures)).toBe(true);
    const at = figures.atRates[1];
    expect(at.rate).toBe(0.03);
    expect(Math.round(at.yearly.value)).toBe(yearly);
    expect(figures.option.body.goodMonths?.value).toBe(months);
    expect(Math.round(at.perGoodMonth?.value ?? 0)).toBe(perMonth);
    expect(figures.option.body.irreversible).toBe(irreversible);
  });

  it('is shown at 2, 3 and 4 per cent, always', () => {
    for (const { atRates } of reckoned) expect(atRates.map(({ rate }) => rate)).toEqual([0.02, 0.03, 0.04]);
  });

  it('says both: the cheapest in money is the dearest per good month', () => {
    expect(sideBySide(reckoned)).toEqual([
      { code: 'option: cheapest a year', params: { option: 'option/A' } },
      { code: 'option: dearest a year', params: { option: 'option/B' } },
      { code: 'option: cheapest per good month', params: { option: 'option/C' } },
      { code: 'option: dearest per good month', params: { option: 'option/A' } },
    ]);
    expect(bestBuy(reckoned)).toBe(c);
  });

  it('and C has cost no more than B only from year 19 on, and more than A to the end', () => {
    expect(overtakesIn(c.payments, b.payments, 0.03)).toBe(19);
    expect(overtaking(c, reckoned)).toEqual([
      { code: 'option: dearer throughout', params: { option: 'option/C', other: 'option/A', years: 20 } },
      { code: 'option: overtakes', params: { option: 'option/C', other: 'option/B', year: 19 } },
    ]);
  });

  it('and what speaks against the favourite is said of the favourite', () => {
    expect(codes(figuresAgainst(c, reckoned))).toEqual([
      'option: cheapest a year',
      'option: dearer throughout',
      'option: overtakes',
      'option: steps that cannot be taken back',
      'option: good months only said',
      'option: ranges overlap',
    ]);
  });
});

describe('The price of waiting, to the unit', () => {
  const waiting = priceOfWaiting(
    {
      option: stripAll.body,
      care: { thing: 'option/A', option: waxOnly.body },
      growth: { value: 0.94, low: 0.8, high: 1.1 },
      area: 17.8,
      whole: true,
    },
    rules,
  );

  it('65 296 now, 67 908 in one year, 73 449 in three', () => {
    expect(Math.round(waiting?.now ?? 0)).toBe(65_296);
    expect(waiting?.waits.map(({ years, price }) => [years, Math.round(price)])).toEqual([
      [1, 67_908],
      [3, 73_449],
    ]);
  });

  it('of the 65 296, contingency of 12 % is 6 996', () => {
    const without = priceOfWaiting(
      { option: stripAll.body, care: undefined, growth: null, area: 17.8, whole: true },
      { ...rules, contingency: 0 },
    );
    expect(Math.round((waiting?.now ?? 0) - (without?.now ?? 0))).toBe(6996);
  });

  it('with care meanwhile, 3 100 in one year and 3 100 + 3 224 + 3 352.96 in three, each shown by itself', () => {
    expect(waiting?.waits.map(({ care }) => Number(care.toFixed(2)))).toEqual([3100, 9676.96]);
    expect(waiting?.waits.map(({ extra }) => Math.round(extra.value))).toEqual([5712, 17_830]);
  });
});
