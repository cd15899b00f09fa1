import { expect, it } from 'vitest';
import { addPlanned, editPlanned, plannedOf, setPlanned } from '../../src/actions';
import { defaultMoneyRules } from '../../src/engine/money';
import { type BodyOf, nameOf } from '../../src/engine/record';
import { answered } from '../files/answered';
import { aWork, done, freshDesk } from '../screens/deskwork';

const line = (minor: number, currency = 'EUR'): BodyOf<'option'>['costs'][number] => ({
  ...{ name: 'Strip', amount: { minor, currency }, first: 1, price: 'estimate' },
});

const garden = async () => {
  const desk = await freshDesk();
  const { sculpture } = await aWork(desk, { title: 'Work', number: 'W-1', areas: [1] });
  const way = (costs: BodyOf<'option'>['costs']): BodyOf<'option'> => ({
    ...{ sculpture, sort: 'strip and repatinate', title: 'Strip', costs, irreversible: 1 },
  });
  return { desk, sculpture, way };
};

it.each([
  ['below nothing', [line(-100)], 'money: below nothing'],
  ['absurd', [line(1e15)], 'money: too large'],
  ['of two currencies', [line(100), line(100, 'CHF')], 'money: currencies mixed'],
])('an amount %s is refused with a reason, and nothing is kept', async (_, costs, code) => {
  const { desk, sculpture, way } = await garden();
  expect(await addPlanned(desk, 'option', way(costs))).toMatchObject({ ok: false, reason: { code } });
  expect((await answered(plannedOf(desk, sculpture))).option).toEqual([]);
});

it('an amount in another currency than the collection’s is refused, when it is changed too', async () => {
  const { desk, way } = await garden();
  const rules = { version: 1, currency: 'EUR', ...defaultMoneyRules };
  await done(setPlanned(desk, 'moneyRules', nameOf.moneyRules(desk.collection), rules));
  const { thing } = await done(addPlanned(desk, 'option', way([line(100)])));
  const changed = await editPlanned(desk, 'option', thing, { costs: [line(100, 'CHF')] });
  expect(changed).toEqual({
    ok: false,
    reason: { code: 'money: not the currency here', params: { currency: 'CHF', here: 'EUR' } },
  });
});

it('a quote whose dates are out of order is refused', async () => {
  const { desk, sculpture } = await garden();
  const quote: BodyOf<'quote'> = {
    ...{ sculpture, who: 'A foundry', what: 'Strip', amount: { minor: 100, currency: 'EUR' }, state: 'quote' },
    ...{ date: '2026-03-01', validUntil: '2026-02-01' },
  };
  expect(await addPlanned(desk, 'quote', quote)).toMatchObject({
    ok: false,
    reason: { code: 'quote: ends before it begins' },
  });
});
