import { render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, expect, it, vi } from 'vitest';
import { addSculpture, deskOn, setTourStep, tourStep } from '../../../src/actions';
import { Shell } from '../../../src/screens/shell/Shell';
import { steps } from '../../../src/screens/tour/steps';
import { w } from '../../../src/words';
import { axeFaults } from '../axe';
import { done, freshDesk } from '../deskwork';

beforeEach(() => {
  vi.stubGlobal('matchMedia', () => ({ matches: false }));
  setTourStep(0);
  location.hash = '#/';
});

const garden = async () => {
  const desk = await freshDesk();
  for (const number of ['SW-01', 'SW-02', 'SW-03', 'SW-04', 'SW-05', 'SW-06'])
    await done(addSculpture(desk, { number, title: `Work ${number}` }));
  return deskOn(desk.store, { invented: true });
};
const strip = () => screen.findByRole('region', { name: w.tour.label });

it('is begun by one touch where the demo opens, tells one line for each place, and ends by itself', async () => {
  const user = userEvent.setup();
  render(<Shell desk={await garden()} />);
  await user.click(await screen.findByRole('button', { name: w.shell.tour }));
  for (const { key } of steps) {
    const tour = within(await strip());
    expect(tour.getByText(w.tour.steps[key])).toBeDefined();
    await user.click(tour.getByRole('button', { name: key === steps.at(-1)?.key ? w.tour.end : w.tour.next }));
  }
  await waitFor(() => expect(screen.queryByRole('region', { name: w.tour.label })).toBeNull());
  expect(tourStep.get()).toBe(0);
});

it('goes on where it was after a restart, goes back, and leads there again after a side step', async () => {
  const user = userEvent.setup();
  const desk = await garden();
  setTourStep(9);
  location.hash = '#/settings';
  render(<Shell desk={desk} />);
  const tour = within(await strip());
  expect(tour.getByText(w.tour.steps.due)).toBeDefined();
  expect(await axeFaults()).toEqual([]);
  await user.click(tour.getByRole('button', { name: w.tour.goThere }));
  expect(location.hash).toBe('#/due');
  await user.click(tour.getByRole('button', { name: w.tour.back }));
  expect(tour.getByText(w.tour.steps.colour)).toBeDefined();
});

it('is left by one touch, and stays away on the ladder and in one’s own collection', async () => {
  const user = userEvent.setup();
  const desk = await garden();
  setTourStep(2);
  location.hash = '#/walk';
  const { unmount } = render(<Shell desk={desk} />);
  await screen.findAllByRole('heading', { level: 1 });
  expect(screen.queryByRole('region', { name: w.tour.label })).toBeNull();
  unmount();
  location.hash = '#/settings';
  const own = render(<Shell desk={deskOn(desk.store)} />);
  await screen.findByRole('heading', { level: 1, name: w.settings.title });
  expect(screen.queryByRole('region', { name: w.tour.label })).toBeNull();
  own.unmount();
  render(<Shell desk={desk} />);
  await user.click(within(await strip()).getByRole('button', { name: w.tour.leave }));
  expect(screen.queryByRole('region', { name: w.tour.label })).toBeNull();
});
