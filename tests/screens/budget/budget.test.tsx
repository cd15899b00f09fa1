import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { type Desk, plannedAll, setPlanned } from '../../../src/actions';
import { defaultMoneyRules } from '../../../src/engine/money';
import { type BodyOf, nameOf } from '../../../src/engine/record';
import { BudgetScreen } from '../../../src/screens/budget';
import { answered } from '../../files/answered';
import { axeFaults } from '../axe';
import { aRound, aWork, done, freshDesk, show } from '../deskwork';

const euros = (units: number) => ({ minor: units * 100, currency: 'EUR' });
type Plan = BodyOf<'yearPlan'>;

/** Two works with a round each: 2 m2 of thin green, 1 m2 of thick, 1 m2 with a stop word. */
const twoWorks = async (desk: Desk) => {
  const stair = await aWork(desk, { title: 'Half-Tide Stair', number: 'SW-02', areas: [2, 1, 1] });
  await aRound(desk, stair, '2026-05-12', [
    { 'even-green-film': 0.1 },
    { 'even-green-film': 0.7 },
    { 'pale-powdery-mounds': 0.05 },
  ]);
  await done(
    setPlanned(desk, 'moneyRules', nameOf.moneyRules(desk.collection), {
      ...{ version: 1, currency: 'EUR' },
      ...defaultMoneyRules,
    }),
  );
  return stair;
};
const planOf = (desk: Desk, year: number, more: Partial<Plan>) =>
  done(setPlanned(desk, 'yearPlan', nameOf.yearPlan(desk.collection, year), { year, works: [], ...more }));
const prices: Plan['prices'] = [
  { type: 'repatination', each: euros(1_000), per: 'm2' },
  { type: 'wash', each: euros(10), per: 'm2' },
];

describe('the budget of a year', () => {
  it('says what is done for the sum, what is left and why, with the conservator where one leads', async () => {
    const desk = await freshDesk();
    await twoWorks(desk);
    await planOf(desk, 2026, { prices, budget: euros(1_500) });
    show(desk, <BudgetScreen />);
    const row = await screen.findByRole('row', { name: /^SW-02, B · part B/ });
    expect(row.textContent).toContain('Repatination (a conservator leads)');
    expect(row.textContent).toContain('EUR 1,000');
    expect(screen.getByText(/^EUR 1,000 of EUR 1,500 takes away 0\.\d\d m² of loss\.$/)).toBeDefined();
    const left = within(screen.getByRole('table', { name: 'What is left undone' }));
    expect(left.getByRole('row', { name: /^SW-02, A · part A/ }).textContent).toContain('The sum does not reach.');
    expect(left.getByRole('row', { name: /^SW-02, C · part C/ }).textContent).toContain('A stop word was seen there.');
    expect(screen.getByRole('note', { name: /1 zone waits for the conservator’s word/ })).toBeDefined();
    expect(screen.getByText(/is for the conservator to say\.$/)).toBeDefined();
  });

  it('follows a sum that is tried, and keeps it only where that is asked for', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    await twoWorks(desk);
    await planOf(desk, 2026, { prices, budget: euros(1_500) });
    show(desk, <BudgetScreen />);
    const sum = await screen.findByLabelText('Sum for the year');
    await user.clear(sum);
    await user.type(sum, '4000');
    expect(await screen.findByText(/^EUR 3,000 of EUR 4,000 takes away/)).toBeDefined();
    expect(screen.getByText('More money would take nothing more away.')).toBeDefined();
    expect((await answered(plannedAll(desk))).yearPlan[0]?.body.budget).toEqual(euros(1_500));
    await user.click(screen.getByRole('button', { name: 'Keep as the budget of 2026' }));
    await waitFor(async () =>
      expect((await answered(plannedAll(desk))).yearPlan[0]?.body.budget).toEqual(euros(4_000)),
    );
    expect(screen.queryByRole('button', { name: 'Keep as the budget of 2026' })).toBeNull();
  });

  it('names the step up that does most, and draws how the loss falls', async () => {
    const desk = await freshDesk();
    await twoWorks(desk);
    await planOf(desk, 2026, { prices, budget: euros(400) });
    show(desk, <BudgetScreen />);
    expect(await screen.findByText('Nothing with a price can be done for this sum.')).toBeDefined();
    expect(screen.getByText(/^With EUR 600 more, another 0\.\d\d m² would go\.$/)).toBeDefined();
    expect(screen.getByRole('img', { name: 'Loss left undone, by the sum spent' })).toBeDefined();
  });

  it('leaves a work out where somebody says so, for this look only', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    await twoWorks(desk);
    const rope = await aWork(desk, { title: 'Four on a Rope', number: 'SW-05', areas: [1] });
    await aRound(desk, rope, '2026-05-12', [{ 'even-green-film': 0.7 }]);
    await planOf(desk, 2026, { prices, budget: euros(1_000) });
    show(desk, <BudgetScreen />);
    await user.click(await screen.findByRole('button', { name: 'Works to weigh' }));
    await user.click(screen.getByRole('checkbox', { name: 'SW-02 Half-Tide Stair' }));
    expect(await screen.findByText('Left out: SW-02.')).toBeDefined();
    expect(screen.getByRole('row', { name: /^SW-05, A · part A/ }).textContent).toContain('Repatination');
    expect(screen.queryByText(/^SW-02, /)).toBeNull();
  });

  it('says how it weighs, what each work is counted to take away, and that this is its own reading', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    await twoWorks(desk);
    await planOf(desk, 2026, { prices: [...prices, { type: 'local treatment', each: euros(400), per: 'm2' }] });
    show(desk, <BudgetScreen />);
    await user.click(await screen.findByRole('button', { name: 'How it is weighed' }));
    expect(screen.getByText(/^A zone’s loss is its area, times its weight/)).toBeDefined();
    expect(screen.getByText('Local treatment:').closest('li')?.textContent).toMatch(
      /where it covers up to 30 % of the zone/,
    );
    expect(screen.getByText(/This project’s own reading of common practice/)).toBeDefined();
  });

  it('takes off the lift days already planned', async () => {
    const desk = await freshDesk();
    await twoWorks(desk);
    await planOf(desk, 2026, { prices, budget: euros(1_300), liftDays: [{ day: '2026-05-12', cost: euros(400) }] });
    show(desk, <BudgetScreen />);
    expect(await screen.findByText('Of it EUR 400 is for the lift days already planned.')).toBeDefined();
    expect(screen.getByText('Nothing with a price can be done for this sum.')).toBeDefined();
  });

  it('starts without prices, takes them typed, in the currency asked for', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    await twoWorks(desk);
    show(desk, <BudgetScreen />);
    expect(await screen.findByText(/^Give the prices you know/)).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'Change prices' }));
    const sheet = within(screen.getByRole('dialog', { name: 'Prices of 2026' }));
    await user.selectOptions(sheet.getByLabelText('Work 1'), 'Local treatment');
    await user.type(sheet.getByLabelText('Price 1'), '-3');
    await user.click(sheet.getByRole('button', { name: 'Keep' }));
    expect(sheet.getByText('An amount cannot be below nothing.')).toBeDefined();
    await user.clear(sheet.getByLabelText('Price 1'));
    await user.type(sheet.getByLabelText('Price 1'), '420');
    await user.selectOptions(sheet.getByLabelText('Price 1 is'), 'per zone');
    await user.click(sheet.getByRole('button', { name: 'Keep' }));
    expect(await screen.findByText('EUR 420 per zone')).toBeDefined();
    expect((await answered(plannedAll(desk))).yearPlan[0]?.body).toMatchObject({
      year: 2026,
      prices: [{ type: 'local treatment', each: euros(420), per: 'zone' }],
    });
  });

  it('keeps prices that came from elsewhere in their currency, where the collection has none of its own', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const stair = await aWork(desk, { title: 'Half-Tide Stair', number: 'SW-02', areas: [2] });
    await aRound(desk, stair, '2026-05-12', [{ 'even-green-film': 0.1 }]);
    await planOf(desk, 2026, { prices });
    show(desk, <BudgetScreen />);
    await user.click(await screen.findByRole('button', { name: 'Change prices' }));
    const sheet = within(screen.getByRole('dialog', { name: 'Prices of 2026' }));
    expect(sheet.queryByLabelText('Currency')).toBeNull();
    await user.clear(sheet.getByLabelText('Price 2'));
    await user.type(sheet.getByLabelText('Price 2'), '11');
    await user.click(sheet.getByRole('button', { name: 'Keep' }));
    expect(await screen.findByText('EUR 11 per m²')).toBeDefined();
  });

  it('takes over the prices of another year', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    await twoWorks(desk);
    await planOf(desk, 2026, { prices });
    show(desk, <BudgetScreen />);
    await user.click(await screen.findByRole('radio', { name: '2027' }));
    await user.click(await screen.findByRole('button', { name: 'Take over the prices of 2026' }));
    await waitFor(() => expect(screen.getByText('EUR 1,000 per m²')).toBeDefined());
    const plans = (await answered(plannedAll(desk))).yearPlan;
    expect(plans.find(({ body }) => body.year === 2027)?.body.prices).toEqual(prices);
  });

  it('says to walk a round where none was walked', async () => {
    const desk = await freshDesk();
    await aWork(desk, { title: 'Half-Tide Stair', number: 'SW-02', areas: [2] });
    show(desk, <BudgetScreen />);
    expect(await screen.findByText('Nothing to weigh yet')).toBeDefined();
  });

  it('has nothing amiss for those who do not see it', async () => {
    const desk = await freshDesk();
    await twoWorks(desk);
    await planOf(desk, 2026, { prices, budget: euros(1_500) });
    show(desk, <BudgetScreen />);
    await screen.findByRole('row', { name: /^SW-02, B · part B/ });
    expect(await axeFaults()).toEqual([]);
  });
});
