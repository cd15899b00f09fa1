import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import { recordTreatment } from '../../../src/actions';
import { WalkScreen } from '../../../src/screens/look';
import { axeFaults } from '../axe';
import { aWork, done, freshDesk, show } from '../deskwork';

const garden = async () => {
  const desk = await freshDesk();
  for (const [number, title] of [
    ['X-1', 'Tall One'],
    ['X-2', 'Low One'],
  ] as const) {
    const work = await aWork(desk, { number, title, areas: [1, 1] });
    await done(recordTreatment(desk, work.sculpture, { type: 'wax', date: '2026-05-21', zones: [...work.zones] }));
  }
  return desk;
};

it('a zone is clear in one touch, and one touch takes it back', async () => {
  const user = userEvent.setup();
  show(await garden(), <WalkScreen />);
  expect(await screen.findByText('4 zones on the list of this walk')).toBeDefined();
  const tall = screen.getByRole('region', { name: /Tall One/ });
  expect(within(tall).getAllByText('Coated 21 May 2026; nobody has looked since.')).toHaveLength(2);
  await user.click(within(tall).getByRole('button', { name: 'Zone A: Clear' }));
  expect(await screen.findAllByText('1 zone looked at, 3 left')).toHaveLength(2);
  expect(within(tall).getByRole('button', { name: 'Zone A: Clear' }).getAttribute('aria-pressed')).toBe('true');
  await user.click(screen.getByRole('button', { name: /^Undo/ }));
  expect(await screen.findByText('4 zones on the list of this walk')).toBeDefined();
  expect(await axeFaults()).toEqual([]);
});

it('where the green is back a photo is asked for at once, and the end says which coatings it came back on', async () => {
  const user = userEvent.setup();
  show(await garden(), <WalkScreen />);
  const low = await screen.findByRole('region', { name: /Low One/ });
  await user.click(within(low).getByRole('button', { name: 'Zone B: Green is back' }));
  expect(await within(low).findByText(/Photograph it now/)).toBeDefined();
  expect(screen.getByText('The green is back on 1 zone:')).toBeDefined();
  expect(screen.getByRole('link', { name: 'End the walk' })).toBeDefined();
});

it('all that is left of a work is clear in one touch', async () => {
  const user = userEvent.setup();
  show(await garden(), <WalkScreen />);
  await user.click(await screen.findByRole('button', { name: 'All 2 left are clear: Tall One' }));
  expect(await screen.findAllByText('2 zones looked at, 2 left')).toHaveLength(2);
});

it('the state of the surfaces is said once and kept for the day', async () => {
  const user = userEvent.setup();
  const desk = await garden();
  const first = show(desk, <WalkScreen />);
  await user.click(await screen.findByRole('button', { name: 'Change' }));
  await user.click(screen.getByRole('radio', { name: 'Damp' }));
  await user.click(screen.getByRole('button', { name: 'Done' }));
  expect(screen.getByText('Surface damp, planned look.')).toBeDefined();
  first.unmount();
  show(desk, <WalkScreen />);
  expect(await screen.findByText('Surface damp, planned look.')).toBeDefined();
});

it('with no work, and with zones never coated, says what to do', async () => {
  const desk = await freshDesk();
  const none = show(desk, <WalkScreen />);
  expect(await screen.findByText('There is no work to walk past yet.')).toBeDefined();
  none.unmount();
  await aWork(desk, { number: 'X-3', title: 'Never Waxed', areas: [1] });
  show(desk, <WalkScreen />);
  expect(await screen.findByText('Nothing is due on this walk.')).toBeDefined();
  expect(screen.getByRole('button', { name: 'Show 1 zone not on the list' })).toBeDefined();
});
