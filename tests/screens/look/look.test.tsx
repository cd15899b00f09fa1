import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { LookScreen } from '../../../src/screens/look';
import { aRound, aWork, freshDesk, show } from '../deskwork';

const atTheWork = async () => {
  const desk = await freshDesk();
  const work = await aWork(desk, { title: 'Test figure', number: 'T-1', areas: [1, 2] });
  await aRound(desk, work, '2026-05-12', [{ 'green-spots': 0.03 }, 'nothing']);
  show(desk, <LookScreen sculpture={work.sculpture} />);
  const looks = async () =>
    (await desk.store.within(work.sculpture, ['look'])).filter((c) => !c.gone).map((c) => c.lead.body);
  return { desk, work, looks, user: userEvent.setup() };
};

describe('a look', () => {
  it('shows the zones that had green, and the others when asked', async () => {
    const { user } = await atTheWork();
    expect(await screen.findByRole('button', { name: 'Zone A: Clear' })).toBeDefined();
    expect(screen.queryByRole('button', { name: 'Zone B: Clear' })).toBeNull();
    await user.click(screen.getByRole('button', { name: 'Show 1 more zone' }));
    expect(await screen.findByRole('button', { name: 'Zone B: Clear' })).toBeDefined();
  });

  it('is kept with one touch, dated today, dry as it says above', async () => {
    const { user, looks, work } = await atTheWork();
    await user.click(await screen.findByRole('button', { name: 'Zone A: Clear' }));
    expect(await screen.findByText('Today: clear')).toBeDefined();
    expect(await looks()).toEqual([
      {
        sculpture: work.sculpture,
        zone: work.zones[0],
        result: 'clear',
        planned: true,
        wet: 'dry',
        date: '2026-10-15',
      },
    ]);
  });

  it('said twice is one look', async () => {
    const { user, looks } = await atTheWork();
    await user.click(await screen.findByRole('button', { name: 'Zone A: Clear' }));
    await screen.findByText('Today: clear');
    await user.click(screen.getByRole('button', { name: 'Zone A: Clear' }));
    expect(await looks()).toHaveLength(1);
  });

  it('that saw green asks for a photo', async () => {
    const { user } = await atTheWork();
    await user.click(await screen.findByRole('button', { name: 'Zone A: Green is back' }));
    expect(await screen.findByRole('button', { name: /Take a photo: Zone A/ })).toBeDefined();
  });

  it('is taken back with one touch', async () => {
    const { user, looks } = await atTheWork();
    await user.click(await screen.findByRole('button', { name: 'Zone A: Clear' }));
    await user.click(await screen.findByRole('button', { name: /^Undo/ }));
    await waitFor(async () => expect(await looks()).toEqual([]));
  });
});
