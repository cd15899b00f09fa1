import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { leaveZone, startRound, touchZone } from '../../../src/actions';
import { EndRoundScreen, ZoneScreen } from '../../../src/screens/round';
import { aRound, aWork, done, freshDesk, type SeenIn, show } from '../deskwork';

const openZone = async (last?: readonly SeenIn[]) => {
  const desk = await freshDesk();
  const work = await aWork(desk, { title: 'Test figure', number: 'T-1', areas: [1, 2] });
  if (last) await aRound(desk, work, '2025-05-12', last);
  const start = { type: 'annual', date: '2026-05-12', wet: 'dry', washed: 'before wash', ownEye: true } as const;
  const { round } = await done(startRound(desk, work.sculpture, start));
  show(desk, <ZoneScreen round={round} zone={work.zones[0] as string} />);
  await screen.findByRole('heading', { level: 1 });
  return { desk, work, round, user: userEvent.setup() };
};

const focused = () => document.activeElement as HTMLElement;

describe('With keys alone', () => {
  it('the question that follows a touch has the focus, so that it is read out and Tab goes into it', async () => {
    const { user } = await openZone();
    screen.getByRole('button', { name: 'Green' }).focus();
    await user.keyboard('{Enter}');
    const kinds = await screen.findByRole('group', { name: 'Green: which?' });
    await waitFor(() => expect(focused()).toBe(kinds));
    await user.tab();
    expect(within(kinds).getAllByRole('button')[0]).toBe(focused());
  });

  it('arrows go from answer to answer within a question, Home and End to its ends, and not out of it', async () => {
    const { user } = await openZone();
    const answers = within(screen.getByRole('group', { name: 'Answer for the whole zone' })).getAllByRole('button');
    answers[0]?.focus();
    await user.keyboard('{ArrowRight}');
    expect(focused()).toBe(answers[1]);
    await user.keyboard('{ArrowRight}{ArrowRight}');
    expect(focused()).toBe(answers.at(-1));
    await user.keyboard('{Home}');
    expect(focused()).toBe(answers[0]);
    await user.keyboard('{End}{ArrowLeft}');
    expect(focused()).toBe(answers.at(-2));
  });

  it('Escape goes back to the list, and Ctrl and Z undo the last touch', async () => {
    const { user } = await openZone();
    await user.click(screen.getByRole('button', { name: 'Could not reach' }));
    await screen.findByRole('group', { name: 'Why could it not be looked at?' });
    await user.keyboard('{Escape}');
    await screen.findByRole('group', { name: 'What do you see? Choose a group' });
    await user.keyboard('{Control>}z{/Control}');
    await screen.findByRole('group', { name: 'Why could it not be looked at?' });
  });

  it('undo leaves text alone that is being written', async () => {
    const { user } = await openZone();
    await user.click(screen.getByRole('button', { name: 'Green' }));
    await user.click(await screen.findByRole('button', { name: 'Back to the list' }));
    await user.click(await screen.findByRole('button', { name: 'Note' }));
    await user.type(await screen.findByRole('textbox'), 'by the seam');
    await user.keyboard('{Control>}z{/Control}');
    expect(screen.getByRole('dialog')).toBeDefined();
    await user.keyboard('{Control>}{/Control}');
    expect(screen.queryByRole('group', { name: 'Green: which?' })).toBeNull();
  });

  it('of a zone asked again the new question has the focus, though its buttons are the same', async () => {
    const seen = { 'even-green-film': 0.2, 'green-spots': 0.05 };
    const { desk, round, work } = await openZone([seen, 'nothing']);
    const [zone = '', other = ''] = work.zones;
    for (const key of Object.keys(seen)) {
      await done(touchZone(desk, round, zone, { do: 'open', key: `${key}/metal` }));
      const coverage = { value: 0.2, low: 0.175, high: 0.25, method: 'ladder' as const };
      await done(touchZone(desk, round, zone, { do: 'cover', coverage }));
      await touchZone(desk, round, zone, { do: 'against', against: 'changed' });
    }
    await done(leaveZone(desk, round, zone, { how: 'next' }));
    await done(leaveZone(desk, round, other, { how: 'nothing' }));
    document.body.innerHTML = '';
    const { unmount } = show(desk, <EndRoundScreen round={round} />);
    const first = await screen.findByRole('heading', { level: 2, name: /Once more/ });
    expect(focused()).not.toBe(first);
    const step = screen.getByRole('button', { name: 'about 10 %' });
    step.focus();
    await userEvent.keyboard('{Enter}');
    await waitFor(() => expect(focused()).toBe(screen.getByRole('heading', { level: 2, name: /Once more/ })));
    unmount();
  });
});
