import { fireEvent, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { addSurveyor, setSetting, setSurveyor, settings } from '../../../src/actions';
import { Shell } from '../../../src/screens/shell/Shell';
import { done, freshDesk } from '../deskwork';

const minutes = 60_000;
const lastTouch = 'patina-round.last touch';
const leftAlone = (for_: number) => localStorage.setItem(lastTouch, JSON.stringify(Date.now() - for_));

beforeEach(() => {
  vi.stubGlobal('matchMedia', () => ({ matches: false }));
  location.hash = '#/settings';
});
afterEach(() => {
  vi.unstubAllGlobals();
  localStorage.clear();
  setSurveyor('');
  setSetting('gloves', false);
});

const withPeople = async (...roles: string[]) => {
  const desk = await freshDesk();
  const people: string[] = [];
  for (const role of roles) people.push((await done(addSurveyor(desk, { role }))).surveyor);
  setSurveyor(people[0] ?? '');
  render(<Shell desk={desk} />);
  await screen.findByRole('heading', { level: 1, hidden: true });
  await screen.findByRole('radio', { name: roles[0] ?? '', hidden: true });
  return people;
};

describe('A tablet left alone for half an hour', () => {
  it('asks who is at work, and one touch answers', async () => {
    leftAlone(31 * minutes);
    const [, helper] = await withPeople('Steward', 'Helper');
    const sheet = await screen.findByRole('dialog', { name: 'Who is at work now?' });
    await userEvent.click(within(sheet).getByRole('button', { name: 'Helper' }));
    expect(settings.get().surveyor).toBe(helper);
    expect(screen.queryByRole('dialog')).toBeNull();
  });

  it('is woken by a touch that does nothing else', async () => {
    const [steward] = await withPeople('Steward', 'Helper');
    expect(screen.queryByRole('dialog')).toBeNull();
    leftAlone(45 * minutes);
    const gloves = screen.getByRole('checkbox', { name: /Gloves/ });
    fireEvent.click(gloves);
    const sheet = await screen.findByRole('dialog', { name: 'Who is at work now?' });
    expect(settings.get().gloves).toBe(false);
    await userEvent.click(within(sheet).getByRole('button', { name: 'Still Steward' }));
    expect(settings.get().surveyor).toBe(steward);
    await userEvent.click(gloves);
    expect(settings.get().gloves).toBe(true);
    await userEvent.click(gloves);
  });

  it('asks when the page comes back into view, without a touch', async () => {
    await withPeople('Steward', 'Helper');
    leftAlone(30 * minutes);
    document.dispatchEvent(new Event('visibilitychange'));
    expect(await screen.findByRole('dialog', { name: 'Who is at work now?' })).toBeDefined();
  });

  it('does not ask where one person works here, nor after a short rest', async () => {
    leftAlone(120 * minutes);
    await withPeople('Steward');
    document.dispatchEvent(new Event('visibilitychange'));
    await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull());
    fireEvent.click(screen.getByRole('checkbox', { name: /Gloves/ }));
    expect(settings.get().gloves).toBe(true);
    fireEvent.click(screen.getByRole('checkbox', { name: /Gloves/ }));
    expect(screen.queryByRole('dialog')).toBeNull();
  });
});
