import { describe, expect, it } from 'vitest';
import { addPlanned, addSculpture, editPlanned, plannedAll, setPlanned } from '../../src/actions';
import { defaultMoneyRules } from '../../src/engine/money';
import { nameOf } from '../../src/engine/record';
import { answered } from '../files/answered';
import { done, freshDesk } from '../screens/deskwork';

const euros = (units: number) => ({ minor: units * 100, currency: 'EUR' });
const pounds = (units: number) => ({ minor: units * 100, currency: 'GBP' });

const withFund = async () => {
  const desk = await freshDesk();
  const { sculpture } = await done(addSculpture(desk, { number: 'SW-02', title: 'Half-Tide Stair' }));
  const rules = { version: 1, currency: 'EUR', ...defaultMoneyRules };
  await done(setPlanned(desk, 'moneyRules', nameOf.moneyRules(desk.collection), rules));
  const lines = [{ id: 'strip', name: 'Strip', amount: euros(46_000) }];
  const { thing } = await done(
    addPlanned(desk, 'fund', { title: 'The stair', sculpture, lines, priced: '2026-03-02' }),
  );
  return { desk, sculpture, fund: thing };
};

describe('a fund and its gifts', () => {
  it('take no amount in another currency, and keep nothing of what was refused', async () => {
    const { desk, sculpture, fund } = await withFund();
    const gift = await addPlanned(desk, 'gift', {
      sculpture,
      fund,
      who: 'A visitor',
      amount: pounds(5),
      state: 'pledged',
    });
    expect(gift).toMatchObject({
      ok: false,
      reason: { code: 'money: currencies mixed', params: { one: 'EUR', other: 'GBP' } },
    });
    const upkeep = await editPlanned(desk, 'fund', fund, { upkeep: pounds(3_100) });
    expect(upkeep).toMatchObject({ ok: false, reason: { code: 'money: currencies mixed' } });
    const kept = await answered(plannedAll(desk));
    expect(kept.gift).toEqual([]);
    expect(kept.fund[0]?.body.upkeep).toBeUndefined();
  });

  it('take nothing below nothing, and no day before another it follows', async () => {
    const { desk, sculpture, fund } = await withFund();
    const below = await addPlanned(desk, 'gift', {
      sculpture,
      fund,
      who: 'A visitor',
      amount: euros(-5),
      state: 'pledged',
    });
    expect(below).toMatchObject({ ok: false, reason: { code: 'money: below nothing' } });
    const before = await editPlanned(desk, 'fund', fund, { wanted: '2026-01-01' });
    expect(before).toMatchObject({ ok: false, reason: { code: 'fund: wanted before priced' } });
  });

  it('tie a gift only to costs the fund has', async () => {
    const { desk, sculpture, fund } = await withFund();
    const gift = { sculpture, fund, who: 'A visitor', amount: euros(5), state: 'pledged' as const };
    expect(await addPlanned(desk, 'gift', { ...gift, only: ['roof'] })).toMatchObject({
      reason: { code: 'fund: line not known' },
    });
    expect(await addPlanned(desk, 'gift', { ...gift, only: ['strip'] })).toMatchObject({ ok: true });
  });
});

describe('the prices of a year', () => {
  it('are of one currency, that of the budget', async () => {
    const { desk } = await withFund();
    const plan = (more: object) =>
      setPlanned(desk, 'yearPlan', nameOf.yearPlan(desk.collection, 2026), { year: 2026, works: [], ...more });
    const prices = [{ type: 'wax', each: euros(40), per: 'm2' as const }];
    expect(await plan({ prices, budget: pounds(500) })).toMatchObject({
      ok: false,
      reason: { code: 'money: currencies mixed' },
    });
    expect(await plan({ prices, budget: euros(500) })).toMatchObject({ ok: true });
  });
});
