import { render, screen, within } from '@testing-library/react';
import { expect, it } from 'vitest';
import { addInterpretation, addSculpture } from '../../../src/actions';
import { idPart } from '../../../src/engine/record';
import { Shell } from '../../../src/screens/shell/Shell';
import { done, freshDesk } from '../deskwork';

const workPage = async (thoughts: readonly string[]) => {
  const desk = await freshDesk();
  const { sculpture } = await done(addSculpture(desk, { number: '1', title: 'Bather' }));
  for (const statement of thoughts)
    await done(addInterpretation(desk, sculpture, { statement, by: 'Invented conservator', date: '1987' }));
  location.hash = `#/sculpture/${idPart(sculpture)}`;
  render(<Shell desk={desk} />);
  await screen.findByRole('heading', { level: 1, name: 'Bather' });
};

it('the page of a work tells what was thought in a part of its own, with whose thought it is and of when', async () => {
  await workPage(['The pond keeps it damp']);
  const part = (await screen.findByRole('heading', { name: 'Thought, not seen' })).closest('section');
  const told = within(part as HTMLElement);
  expect(told.getByText('The pond keeps it damp')).toBeDefined();
  expect(told.getByText('Invented conservator, 1987')).toBeDefined();
});

it('has no such part where nothing was thought', async () => {
  await workPage([]);
  expect(await screen.findByRole('heading', { name: 'What is known' })).toBeDefined();
  expect(screen.queryByRole('heading', { name: 'Thought, not seen' })).toBeNull();
});
