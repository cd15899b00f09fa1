import { screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import { addPlanned, plannedOfCollection, undoLast } from '../../../src/actions';
import { moneyOf } from '../../../src/engine/money';
import { MoneyRulesScreen } from '../../../src/screens/money';
import { answered } from '../../files/answered';
import { axeFaults } from '../axe';
import { aWork, done, freshDesk, show } from '../deskwork';

const type = async (user: ReturnType<typeof userEvent.setup>, label: string, text: string) => {
  const field = await screen.findByLabelText(label);
  await user.clear(field);
  if (text) await user.type(field, text);
};
const keep = (user: ReturnType<typeof userEvent.setup>) => user.click(screen.getByRole('button', { name: 'Keep' }));

it('shows its numbers as assumptions of ours until somebody sets them, and assumes no currency', async () => {
  show(await freshDesk(), <MoneyRulesScreen />);
  expect(await screen.findByText(/These are our own assumptions/)).toBeDefined();
  expect(screen.getByLabelText('Currency')).toHaveProperty('value', '');
  expect(screen.getByLabelText('Rate over the rise of prices')).toHaveProperty('value', '3');
  expect(screen.getByLabelText('Contingency')).toHaveProperty('value', '12');
  expect(await axeFaults()).toEqual([]);
});

it('keeps what is set, counts its versions, and an undo takes it back', async () => {
  const user = userEvent.setup();
  const desk = await freshDesk();
  show(desk, <MoneyRulesScreen />);
  await type(user, 'Currency', 'chf');
  await type(user, 'Rate over the rise of prices', '2,5');
  await keep(user);
  expect(await screen.findByText('Set here, version 1.')).toBeDefined();
  const planned = await answered(plannedOfCollection(desk));
  expect(planned.moneyRules[0]?.body).toMatchObject({
    version: 1,
    currency: 'CHF',
    rate: 0.025,
    growth: 0.04,
    years: 20,
  });
  await done(undoLast(desk));
  expect(await screen.findByText(/These are our own assumptions/)).toBeDefined();
});

it('works the rate out from interest and inflation, and takes it only when told to', async () => {
  const user = userEvent.setup();
  show(await freshDesk(), <MoneyRulesScreen />);
  await user.click(await screen.findByRole('button', { name: 'Work it out from interest and inflation' }));
  await type(user, 'Interest, as a bank says it (optional)', '8,15');
  await type(user, 'Inflation, as it is published (optional)', '5');
  expect(screen.getByLabelText('Rate over the rise of prices')).toHaveProperty('value', '3');
  await user.clear(screen.getByLabelText('Rate over the rise of prices'));
  await user.click(screen.getByRole('button', { name: 'Take 3 %' }));
  expect(screen.getByLabelText('Rate over the rise of prices')).toHaveProperty('value', '3');
  await type(user, 'Inflation, as it is published (optional)', '9');
  expect(screen.queryByRole('button', { name: /^Take/ })).toBeNull();
});

it('refuses what cannot be so, field by field', async () => {
  const user = userEvent.setup();
  show(await freshDesk(), <MoneyRulesScreen />);
  await type(user, 'Rate over the rise of prices', '300');
  await type(user, 'Years looked at', '2.5');
  await type(user, 'Contingency', 'some');
  await keep(user);
  expect(screen.getByText('Rate over the rise of prices lies between 0 and 30.')).toBeDefined();
  expect(screen.getByText('Years looked at is no number. Write it like 3 or 3.5.')).toBeDefined();
  expect(screen.getByText('Contingency is no number. Write it like 3 or 3.5.')).toBeDefined();
  expect(screen.getByText('Give the three capital letters of the currency, such as EUR.')).toBeDefined();
});

it('does not change the currency under amounts that are in another', async () => {
  const user = userEvent.setup();
  const desk = await freshDesk();
  const { sculpture } = await aWork(desk, { title: 'Work', number: 'W-1', areas: [1] });
  const costs = [{ name: 'Wax', amount: moneyOf(310, 'EUR'), first: 1, every: 1, price: 'estimate' as const }];
  await done(addPlanned(desk, 'option', { sculpture, sort: 'keep waxing', title: 'Wax', costs, irreversible: 0 }));
  show(desk, <MoneyRulesScreen />);
  await type(user, 'Currency', 'CHF');
  await keep(user);
  expect(await screen.findByText('1 entry is in EUR. Change or remove them before the currency.')).toBeDefined();
});
