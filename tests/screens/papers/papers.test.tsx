import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { paperSorts } from '../../../src/papers';
import { KeptWhereScreen, PaperScreen, PapersScreen } from '../../../src/screens/papers';
import { axeFaults } from '../axe';
import { aRound, aWork, freshDesk, show } from '../deskwork';

const textsOf = async (desk: Awaited<ReturnType<typeof freshDesk>>) =>
  (await desk.store.ofKind('paperText')).map(({ lead }) => lead.body);
const letter = paperSorts.find(({ id }) => id === 'letter-to-successor')!;

describe('Papers', () => {
  it('are offered for the work chosen, and every one says for whom it is', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    const other = await aWork(desk, { title: 'Wave', number: '2', areas: [1] });
    show(desk, <PapersScreen />);
    await user.selectOptions(await screen.findByRole('combobox', { name: 'Which work' }), '2 Wave');
    const ofWork = screen.getByRole('heading', { name: 'Of one work' }).closest('section') as HTMLElement;
    const links = within(ofWork).getAllByRole('link');
    expect(links.length).toBeGreaterThan(0);
    for (const link of links) {
      expect(link.getAttribute('href')).toContain(encodeURIComponent(other.sculpture));
      expect(link.textContent).toMatch(/For .+ page/);
    }
    expect(await axeFaults()).toEqual([]);
  });

  it('of one year of a work stand with that work, and make it no second work to choose', async () => {
    const desk = await freshDesk();
    const work = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    await aRound(desk, work, '2025-05-12', ['nothing']);
    await aRound(desk, work, '2026-05-12', ['nothing']);
    show(desk, <PapersScreen />);
    const ofWork = (await screen.findByRole('heading', { name: 'Of one work' })).closest('section') as HTMLElement;
    expect(within(ofWork).queryByRole('combobox')).toBeNull();
    await userEvent.setup().click(within(ofWork).getByRole('button', { name: 'Season log: earlier years' }));
    for (const year of [2025, 2026])
      expect(
        within(ofWork)
          .getByRole('link', { name: new RegExp(`^Season log ${year}`) })
          .getAttribute('href'),
      ).toContain(encodeURIComponent(`${work.sculpture} ${year}`));
  });

  it('of one year of a work are shown from their address', async () => {
    const desk = await freshDesk();
    const work = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    await aRound(desk, work, '2025-05-12', ['nothing']);
    show(desk, <PaperScreen sort="season-log" about={`${work.sculpture} 2025`} />);
    expect(await screen.findByText('Rounds: 12 May 2025.')).toBeDefined();
    expect(screen.getAllByRole('heading', { name: 'Season log 2025' }).length).toBeGreaterThan(0);
  });

  it('with no work in the record say where to begin', async () => {
    show(await freshDesk(), <PapersScreen />);
    expect(await screen.findByText('No work is in the record yet.')).toBeDefined();
    expect(screen.getByRole('link', { name: 'To the sculptures' })).toBeDefined();
  });
});

describe('Words of her own', () => {
  it('are kept as typed when the field is left, and stand on the paper', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    show(desk, <PaperScreen sort={letter.id} about={desk.collection} />);
    const field = await screen.findByRole('textbox', { name: /^To begin with/ });
    await user.type(field, 'Dear friend,{Enter}look at the <b>pond</b> first.');
    await user.tab();
    await waitFor(async () => expect(await textsOf(desk)).toHaveLength(1));
    expect(await textsOf(desk)).toMatchObject([
      { paper: letter.id, about: desk.collection, text: 'Dear friend,\nlook at the <b>pond</b> first.' },
    ]);
    await waitFor(() => expect(screen.getByRole('article').textContent).toContain('look at the <b>pond</b> first.'));
  });

  it('are not lost when the screen is left while the hand is still on the keys', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    const { unmount } = show(desk, <PaperScreen sort={letter.id} about={desk.collection} />);
    await user.type(await screen.findByRole('textbox', { name: /^To begin with/ }), 'half a sen');
    unmount();
    await waitFor(async () => expect(await textsOf(desk)).toMatchObject([{ text: 'half a sen' }]));
  });

  it('are kept when the hand rests', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    show(desk, <PaperScreen sort={letter.id} about={desk.collection} />);
    await user.type(await screen.findByRole('textbox', { name: /^To begin with/ }), 'Look');
    // The hand rests: the field keeps the focus all the while.
    await waitFor(async () => expect(await textsOf(desk)).toMatchObject([{ text: 'Look' }]), { timeout: 4000 });
    expect(document.activeElement?.tagName).toBe('TEXTAREA');
  });
});

describe('A paper that was given out', () => {
  it('is noted with to whom, from what state of the record, and said to be older once the record changes', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const work = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    const { sculpture } = work;
    show(desk, <PaperScreen sort="condition-report" about={sculpture} />);
    await user.click(await screen.findByRole('radio', { name: 'Final' }));
    await user.click(screen.getByRole('button', { name: 'Note that it was given out' }));
    await user.type(screen.getByRole('textbox', { name: /^To whom/ }), 'the broker');
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    await waitFor(async () =>
      expect((await desk.store.ofKind('paperIssued')).map(({ lead }) => lead.body)).toMatchObject([
        {
          sculpture,
          paper: 'condition-report',
          about: sculpture,
          to: 'the broker',
          status: 'final',
          date: '2026-10-15',
        },
      ]),
    );
    expect(await screen.findByText(/to the broker/)).toBeDefined();
    expect(await screen.findByText('The record it was made from stands as it did then.')).toBeDefined();
    await aRound(desk, work, '2026-10-14', ['nothing']);
    expect(await screen.findByText('The record it was made from has changed since.')).toBeDefined();
  });
});

describe('Where things are kept', () => {
  it('is written down with what it is and who knows, and asks for the place', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const { sculpture } = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    show(desk, <KeptWhereScreen />);
    await user.click(await screen.findByRole('button', { name: 'Write down a thing' }));
    await user.selectOptions(screen.getByRole('combobox', { name: 'What sort of thing' }), 'colour panels');
    await user.selectOptions(screen.getByRole('combobox', { name: 'Of which work' }), '1 Heron');
    await user.type(screen.getByRole('textbox', { name: /^What it is/ }), 'Panel 2');
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    expect(screen.getByText('Say where it is kept.')).toBeDefined();
    await user.type(screen.getByRole('textbox', { name: /^Where it is kept/ }), 'Store, shelf 4');
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    await waitFor(async () =>
      expect((await desk.store.ofKind('keptWhere')).map(({ lead }) => lead.body)).toMatchObject([
        { sculpture, sort: 'colour panels', what: 'Panel 2', where: 'Store, shelf 4' },
      ]),
    );
    expect(await screen.findByText('Store, shelf 4')).toBeDefined();
  });
});
