import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, it, vi } from 'vitest';
import { addSurveyor, readyAbout, setSurveyor } from '../../../src/actions';
import { ReadyScreen } from '../../../src/screens/ready';
import { pathTo } from '../../../src/screens/shell';
import { axeFaults } from '../axe';
import { aRound, aWork, done, freshDesk, show } from '../deskwork';

vi.mock('../../../src/device/trialWrite', () => ({
  trialWrite: async (bytes: number, heard?: (kept: number) => void) => {
    heard?.(bytes);
    return { kept: bytes, whole: true };
  },
}));

afterEach(() => {
  setSurveyor('');
  Reflect.deleteProperty(navigator, 'getBattery');
  Reflect.deleteProperty(navigator, 'storage');
});

const checked = async () => {
  const desk = await freshDesk();
  const { surveyor } = await done(addSurveyor(desk, { role: 'Steward' }));
  setSurveyor(surveyor);
  const work = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
  await aRound(desk, work, '2026-10-01', ['nothing']);
  show({ ...desk, surveyor: () => surveyor, collection: desk.collection }, <ReadyScreen />);
  const user = userEvent.setup();
  await user.click(screen.getByRole('button', { name: 'Check this tablet' }));
  await screen.findByRole('button', { name: 'Check once more' });
  return { user, list: screen.getByRole('list', { name: 'What was found' }) };
};

it('one touch looks at everything, and puts first what wants a hand, with what to do', async () => {
  const { list } = await checked();
  const lines = within(list).getAllByRole('listitem');
  expect(lines).toHaveLength(readyAbout.length);
  const standing = lines.map((line) => /Look at this|Cannot be known|In order/.exec(line.textContent ?? '')?.[0]);
  const order = ['Look at this', 'Cannot be known', 'In order'];
  expect(standing).toEqual([...standing].sort((a, b) => order.indexOf(a ?? '') - order.indexOf(b ?? '')));
  expect(screen.getByRole('status').textContent).toMatch(/^\d things to look at, \d in order/);
  const copy = lines.find((line) => line.textContent?.startsWith('A second copy'));
  expect(
    within(copy as HTMLElement)
      .getByRole('link', { name: 'Carry it out' })
      .getAttribute('href'),
  ).toBe(pathTo.carry());
  expect(lines.some((line) => line.textContent?.includes('room for 25 photos at least'))).toBe(true);
  expect(lines.some((line) => line.textContent?.includes('Steward. Each record is marked with it.'))).toBe(true);
  expect(await axeFaults()).toEqual([]);
});

it('the promise to keep the record can be asked for on the spot, and is looked at again', async () => {
  let promised = false;
  Object.defineProperty(navigator, 'storage', {
    configurable: true,
    value: {
      persisted: async () => promised,
      persist: async () => {
        promised = true;
        return true;
      },
    },
  });
  const { user, list } = await checked();
  await user.click(within(list).getByRole('button', { name: 'Ask the browser to keep it' }));
  expect(await screen.findByText(/has promised not to clear it/)).toBeDefined();
});

it('before the check it says that the camera will be asked for, and how the tablet is set for hand and light', async () => {
  show(await freshDesk(), <ReadyScreen />);
  expect(screen.getByText(/may ask whether the camera may be used/)).toBeDefined();
  expect(screen.getByText('Indoors, touched with the right hand, buttons for bare hands.')).toBeDefined();
  expect(screen.queryByRole('list', { name: 'What was found' })).toBeNull();
});
