import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { recordTreatment } from '../../../src/actions';
import { LogbookScreen } from '../../../src/screens/logbook';
import { axeFaults } from '../axe';
import { aRound, aWork, done, freshDesk, show } from '../deskwork';

const heron = async () => {
  const desk = await freshDesk();
  return { desk, work: await aWork(desk, { title: 'Grey heron', number: '2', areas: [2, 1] }) };
};
const treatments = async (desk: Awaited<ReturnType<typeof freshDesk>>) =>
  (await desk.store.ofKind('treatment')).filter(({ gone }) => !gone).map(({ lead }) => lead.body);

describe('The logbook', () => {
  it('says what it is for while nothing is written', async () => {
    const { desk, work } = await heron();
    show(desk, <LogbookScreen sculpture={work.sculpture} />);
    expect(await screen.findByText('Nothing written yet')).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('writes down a wax of one zone with its product and coats, and says what to take care of', async () => {
    const user = userEvent.setup();
    const { desk, work } = await heron();
    show(desk, <LogbookScreen sculpture={work.sculpture} />);
    await user.click(await screen.findByRole('button', { name: 'Write an entry' }));
    await user.click(screen.getByRole('radio', { name: 'Cold wax' }));
    expect(within(screen.getByRole('note', { name: /Take care/ })).getByText(/Read the safety sheet/)).toBeDefined();
    await user.click(screen.getByRole('radio', { name: 'Some zones' }));
    await user.click(screen.getByRole('button', { name: 'Write it down' }));
    expect(screen.getByText('Choose at least one zone.')).toBeDefined();
    await user.click(screen.getByRole('checkbox', { name: /part B/ }));
    await user.click(screen.getByRole('radio', { name: 'Product, as on its label' }));
    await user.type(screen.getByRole('textbox', { name: /Product, as on its label/ }), 'paste wax');
    await user.click(screen.getByRole('radio', { name: '2' }));
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Write it down' }));
    expect(await screen.findByText('Zone B · paste wax · 2 coats')).toBeDefined();
    expect(await treatments(desk)).toMatchObject([
      { type: 'wax', date: '2026-10-15', zones: [work.zones[1]], product: 'paste wax', coats: 2 },
    ]);
  });

  it('takes a date as vague as it is known', async () => {
    const user = userEvent.setup();
    const { desk, work } = await heron();
    show(desk, <LogbookScreen sculpture={work.sculpture} />);
    await user.click(await screen.findByRole('button', { name: 'Write an entry' }));
    await user.click(screen.getByRole('checkbox', { name: 'Only roughly known' }));
    await user.click(screen.getByRole('button', { name: 'Write it down' }));
    expect(screen.getByText('Say when, as well as you know it.')).toBeDefined();
    await user.type(screen.getByRole('textbox', { name: /When, as far as you know/ }), 'before 2021');
    await user.click(screen.getByRole('button', { name: 'Write it down' }));
    expect(await screen.findByText('before 2021')).toBeDefined();
  });

  it('offers the product of last time by one touch, and says what a different one means', async () => {
    const user = userEvent.setup();
    const { desk, work } = await heron();
    await done(
      recordTreatment(desk, work.sculpture, {
        zones: [],
        type: 'wax',
        date: '2025-05-20',
        product: 'paste wax',
        coats: 2,
      }),
    );
    show(desk, <LogbookScreen sculpture={work.sculpture} />);
    await user.click(await screen.findByRole('button', { name: 'Write an entry' }));
    expect(screen.getByText('Last time, 20 May 2025: paste wax')).toBeDefined();
    await user.click(screen.getByRole('radio', { name: 'A different product from last time' }));
    expect(screen.getByText('Another coating from here on')).toBeDefined();
    await user.click(screen.getByRole('radio', { name: 'The same product as last time' }));
    await user.click(screen.getByRole('button', { name: 'Write it down' }));
    await waitFor(async () => expect(await treatments(desk)).toHaveLength(2));
    expect((await treatments(desk)).every(({ product }) => product === 'paste wax')).toBe(true);
  });

  it('says who is to be asked, and that the series breaks, before work that strips the metal is written down', async () => {
    const user = userEvent.setup();
    const { desk, work } = await heron();
    show(desk, <LogbookScreen sculpture={work.sculpture} />);
    await user.click(await screen.findByRole('button', { name: 'Write an entry' }));
    await user.click(screen.getByRole('radio', { name: 'Stripped to the metal' }));
    expect(screen.getByRole('note', { name: /Not work for one alone/ })).toBeDefined();
    expect(screen.getByText('The surface is another one after this')).toBeDefined();
  });

  it('opens an entry to be mended or removed, and lists rounds between', async () => {
    const user = userEvent.setup();
    const { desk, work } = await heron();
    await aRound(desk, work, '2026-05-10', ['nothing', 'nothing']);
    await done(recordTreatment(desk, work.sculpture, { zones: [], type: 'wash', date: '2026-05-11' }));
    show(desk, <LogbookScreen sculpture={work.sculpture} />);
    expect(await screen.findByRole('link', { name: /10 May 2026.*Annual round/ })).toBeDefined();
    await user.click(screen.getByRole('checkbox', { name: 'Rounds too' }));
    expect(screen.queryByRole('link', { name: /Annual round/ })).toBeNull();
    await user.click(screen.getByRole('button', { name: /11 May 2026.*Wash.*The whole work.*Edit the entry/ }));
    await user.click(screen.getByRole('button', { name: 'Remove it' }));
    await waitFor(async () => expect(await treatments(desk)).toEqual([]));
  });
});
