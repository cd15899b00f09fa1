import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { addPlanned } from '../../../src/actions';
import { MovesScreen } from '../../../src/screens/moves';
import { axeFaults } from '../axe';
import { aRound, aWork, done, freshDesk, show } from '../deskwork';

describe('Moves and loans', () => {
  it('are written down with where to and when due back', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const { sculpture } = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    show(desk, <MovesScreen />);
    expect(await screen.findByText('No work has been moved.')).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'Write down a move' }));
    await user.selectOptions(screen.getByRole('combobox', { name: 'Which work' }), '1 Heron');
    await user.click(screen.getByRole('radio', { name: 'Lent out' }));
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    expect(screen.getByText('Say where to.')).toBeDefined();
    await user.type(screen.getByRole('textbox', { name: 'To' }), 'the hall');
    await user.type(screen.getByLabelText(/Due back on/), '2026-09-01');
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    expect(await screen.findByText(/comes before 15 October 2026/)).toBeDefined();
    await user.clear(screen.getByLabelText(/Due back on/));
    await user.type(screen.getByLabelText(/Due back on/), '2027-03-01');
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    await waitFor(async () =>
      expect((await desk.store.ofKind('move')).map(({ lead }) => lead.body)).toMatchObject([
        { sculpture, sort: 'loan out', to: 'the hall', backDue: '2027-03-01' },
      ]),
    );
    expect(await screen.findByText('away')).toBeDefined();
  });

  it('show the round before, and ask for one after while nothing is done to the work', async () => {
    const desk = await freshDesk();
    const work = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    await aRound(desk, work, '2026-08-20', ['nothing']);
    const loan = { sculpture: work.sculpture, sort: 'loan out' as const, from: 'quay', to: 'hall', left: '2026-09-01' };
    await done(addPlanned(desk, 'move', { ...loan, back: '2026-10-01' }));
    show(desk, <MovesScreen />);
    expect(await screen.findByRole('link', { name: /20 August 2026/ })).toBeDefined();
    expect(screen.getByText(/No round yet since/)).toBeDefined();
    expect(screen.getByRole('link', { name: 'Begin a round' })).toBeDefined();
  });

  it('say that a work due back is not back', async () => {
    const desk = await freshDesk();
    const work = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    const loan = { sculpture: work.sculpture, sort: 'loan out' as const, from: 'quay', to: 'hall', left: '2026-05-01' };
    await done(addPlanned(desk, 'move', { ...loan, backDue: '2026-09-30' }));
    show(desk, <MovesScreen />);
    expect(await screen.findByText('due back 30 September 2026, not back')).toBeDefined();
    expect(screen.getByText(/No round in the two months before/)).toBeDefined();
  });
});
