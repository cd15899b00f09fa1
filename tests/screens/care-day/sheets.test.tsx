import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { addPlanned, recordLook, recordTreatment } from '../../../src/actions';
import { LedgerScreen, MethodSheetScreen, SeasonScreen } from '../../../src/screens/care-day';
import { axeFaults } from '../axe';
import { aRound, aWork, done, freshDesk, show } from '../deskwork';

const heron = async () => {
  const desk = await freshDesk();
  return { desk, work: await aWork(desk, { title: 'Grey heron', number: '2', areas: [2, 1] }) };
};

describe('What may be done to a work', () => {
  it('is the usual list until somebody says otherwise, and then theirs, with own words first', async () => {
    const { desk, work } = await heron();
    const user = userEvent.setup();
    show(desk, <MethodSheetScreen sculpture={work.sculpture} />);
    expect(await screen.findByText('Pressure washer')).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'Change' }));
    const sheet = screen.getByRole('dialog');
    const never = within(sheet).getByRole('group', { name: 'Never' });
    const allowed = within(sheet).getByRole('group', { name: 'Allowed' });
    await user.click(within(never).getByRole('checkbox', { name: /Cold paste wax/ }));
    expect(within(allowed).getByRole<HTMLInputElement>('checkbox', { name: /Cold paste wax/ }).checked).toBe(false);
    await user.type(
      within(sheet).getByRole('textbox', { name: /Also never/ }),
      'the ladder on the wing{enter}  {enter}',
    );
    await user.type(within(sheet).getByRole('textbox', { name: /Said by/ }), 'Conservator');
    expect(await axeFaults()).toEqual([]);
    await user.click(within(sheet).getByRole('button', { name: 'Keep it' }));
    expect(await screen.findByText('Said by Conservator, 15 October 2026')).toBeDefined();
    expect(screen.getByText('the ladder on the wing')).toBeDefined();
    const [kept] = await desk.store.ofKind('methodSheet');
    expect(kept?.lead.body).toMatchObject({ alsoForbidden: ['the ladder on the wing'], setBy: 'Conservator' });
    expect(kept?.lead.body.allowed).not.toContain('cold wax');
    expect(kept?.lead.body.forbidden).toContain('cold wax');
  });
});

describe('The log of a season', () => {
  it('tells what was done, by whom and how long, in what air, at what cost, and what was not reached', async () => {
    const { desk, work } = await heron();
    const { thing: stock } = await done(
      addPlanned(desk, 'product', { name: 'Paste', sort: 'microcrystalline', unit: 'g' }),
    );
    const air = { before: 'wax', air: 16, humidity: 80, surface: 14, dryHours: 48, said: 'wait' } as const;
    const { thing: weather } = await done(
      addPlanned(desk, 'weather', {
        ...{ sculpture: work.sculpture, date: '2026-05-21', time: '10:40', ...air },
        overridden: { by: 'Steward', why: 'wind' },
      }),
    );
    await done(
      recordTreatment(desk, work.sculpture, {
        ...{ zones: [work.zones[0]!], type: 'wax', date: '2026-05-21', product: 'Paste', batch: 'W-26A', coats: 2 },
        ...{ weather, stock, used: 75, left: 'behind the wing', cost: { minor: 1250, currency: 'EUR' } },
        people: [
          { role: 'Steward', hours: 2 },
          { role: 'Helper', hours: 2.5 },
        ],
      }),
    );
    await done(recordLook(desk, work.sculpture, { zone: work.zones[0]!, result: 'clear', planned: true, wet: 'dry' }));
    await aRound(desk, work, '2026-05-12', ['nothing', 'nothing']);
    show(desk, <SeasonScreen sculpture={work.sculpture} />);
    expect(await screen.findByRole('heading', { level: 1, name: 'Season log 2026' })).toBeDefined();
    expect(screen.getByText('Wait at 10:40, 1.4 K over dew; gone on all the same')).toBeDefined();
    expect(screen.getByText('Steward 2 h, Helper 2.5 h')).toBeDefined();
    expect(screen.getByText('Paste, batch W-26A')).toBeDefined();
    expect(screen.getByText('Helper: 2.5 h')).toBeDefined();
    expect(screen.getByText('Paste, batch W-26A: once, 75 g')).toBeDefined();
    expect(screen.getByText('Cost: EUR 12.50')).toBeDefined();
    expect(screen.getByText('21 May 2026: behind the wing')).toBeDefined();
    expect(screen.getByText('Looks: 1 clear, 0 green back.')).toBeDefined();
    expect(screen.getByText('Gone on once against the reading.')).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('says so for a year in which nothing was done', async () => {
    const { desk, work } = await heron();
    show(desk, <SeasonScreen sculpture={work.sculpture} />);
    expect(await screen.findByText('Nothing is written down for this year.')).toBeDefined();
  });
});

describe('The metal ledger', () => {
  it('is empty with a hint to ask for old reports', async () => {
    const { desk, work } = await heron();
    show(desk, <LedgerScreen sculpture={work.sculpture} />);
    expect(await screen.findByText('Nothing was ever taken off')).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('says how often the surface was stripped, and which the next would be, zone by zone', async () => {
    const { desk, work } = await heron();
    await done(recordTreatment(desk, work.sculpture, { zones: [], type: 'strip', date: '1998', by: 'a foundry' }));
    await done(
      recordTreatment(desk, work.sculpture, {
        ...{ zones: [work.zones[1]!], type: 'cleaning by media', date: '2023-09-04', ended: '2023-09-06' },
        takenAway: 0.4,
      }),
    );
    show(desk, <LedgerScreen sculpture={work.sculpture} />);
    expect(await screen.findByText('This surface has been stripped twice.')).toBeDefined();
    expect(screen.getByText(/Another would be the third/)).toBeDefined();
    expect(screen.getByRole('rowheader', { name: '4 September 2023 to 6 September 2023' })).toBeDefined();
    const row = screen.getByRole('row', { name: /Zone A, part A/ });
    expect(within(row).getByText('second')).toBeDefined();
    expect(within(screen.getByRole('row', { name: /Zone B, part B/ })).getByText('third')).toBeDefined();
    expect(await axeFaults()).toEqual([]);
    await waitFor(() => expect(document.title).toContain('Metal ledger'));
  });
});
