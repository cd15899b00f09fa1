import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { addPlanned, airOfDay, openPersonCheck, recordTreatment } from '../../../src/actions';
import { CareDayScreen } from '../../../src/screens/care-day';
import { axeFaults } from '../axe';
import { aRound, aWork, done, freshDesk, show } from '../deskwork';

const heron = async () => {
  const desk = await freshDesk();
  return { desk, work: await aWork(desk, { title: 'Grey heron', number: '2', areas: [2, 1] }) };
};
type Desk = Awaited<ReturnType<typeof freshDesk>>;
const bodies = async (desk: Desk, kind: 'weather' | 'treatment') =>
  (await desk.store.ofKind(kind)).filter(({ gone }) => !gone).map(({ lead }) => lead.body);

/** Types three readings and says how long it has been dry. */
const read = async (air: string, humidity: string, surface: string) => {
  const user = userEvent.setup();
  await user.clear(await screen.findByRole('textbox', { name: /^Air/ }));
  await user.type(screen.getByRole('textbox', { name: /^Air/ }), air);
  await user.type(screen.getByRole('textbox', { name: /^Humidity/ }), humidity);
  await user.type(screen.getByRole('textbox', { name: /^Bronze surface/ }), surface);
  await user.click(screen.getByRole('radio', { name: '24 hours or more' }));
  return user;
};

describe('The wash and wax day', () => {
  it('says first what must not touch the work, and that nobody has said it of this one yet', async () => {
    const { desk, work } = await heron();
    show(desk, <CareDayScreen sculpture={work.sculpture} />);
    const never = await screen.findByRole('note', { name: /Not on this work/ });
    const each = within(never)
      .getAllByRole('listitem')
      .map(({ textContent }) => textContent);
    expect(each).toContain('Pressure washer');
    expect(each.some((name) => name?.startsWith('Bleach'))).toBe(true);
    expect(within(never).getByText(/The usual list/)).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('names above all else the zones that are neither washed nor waxed before the conservator has spoken', async () => {
    const { desk, work } = await heron();
    await aRound(desk, work, '2026-05-12', ['nothing', { 'green-under-film': 0.03 }]);
    await done(openPersonCheck(desk, work.sculpture, { what: 'The wing is loose' }));
    show(desk, <CareDayScreen sculpture={work.sculpture} />);
    const danger = await screen.findByRole('note', { name: /Danger to people, not closed/ });
    expect(within(danger).getByText('The wing is loose')).toBeDefined();
    const alone = await screen.findByRole('note', { name: /Not washed, not waxed yet/ });
    expect(
      within(alone)
        .getAllByRole('listitem')
        .map(({ textContent }) => textContent),
    ).toEqual(['Zone B: Green under wax or lacquer. Ask the conservator first.']);
    expect(await axeFaults()).toEqual([]);
  });

  it('answers nothing while a number is missing: nothing counts as read that was not', async () => {
    const { desk, work } = await heron();
    const user = userEvent.setup();
    show(desk, <CareDayScreen sculpture={work.sculpture} />);
    expect(await screen.findByText(/the answer comes here/)).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'Air: 1 more' }));
    await user.click(screen.getByRole('button', { name: 'Humidity: 5 more' }));
    expect(screen.getByText(/the answer comes here/)).toBeDefined();
    expect(screen.queryByRole('button', { name: 'Keep this reading' })).toBeNull();
  });

  it('steps with a glove: the first touch starts, the next go on', async () => {
    const { desk, work } = await heron();
    const user = userEvent.setup();
    show(desk, <CareDayScreen sculpture={work.sculpture} />);
    const up = await screen.findByRole('button', { name: 'Bronze surface: 1 more' });
    await user.click(up);
    await user.click(up);
    await user.click(screen.getByRole('button', { name: 'Bronze surface: 0.1 less' }));
    expect(screen.getByRole<HTMLInputElement>('textbox', { name: /^Bronze surface/ }).value).toBe('15.9');
  });

  it('tells where its limits come from, and which of them are only practice or our own choice', async () => {
    const { desk, work } = await heron();
    const user = userEvent.setup();
    show(desk, <CareDayScreen sculpture={work.sculpture} />);
    await user.click(await screen.findByRole('button', { name: 'Where these limits come from' }));
    const rows = screen.getAllByRole('listitem').map(({ textContent }) => textContent ?? '');
    expect(rows.find((row) => row.includes('Surface over the dew point'))).toMatch(/3\sK.*ISO 8502-4/);
    expect(rows.find((row) => row.includes('Dry for'))).toMatch(/24\sh.*no source/);
    expect(rows.find((row) => row.includes('Hygrometer'))).toMatch(/3\s%.*Our own assumption/);
    expect(rows.find((row) => row.includes('Dew point'))).toMatch(/Alduchov and Eskridge 1996/);
    expect(await axeFaults()).toEqual([]);
  });

  it('stands where it was left, also after a restart, until the reading is kept', async () => {
    const { desk, work } = await heron();
    const { unmount } = show(desk, <CareDayScreen sculpture={work.sculpture} />);
    const user = await read('16', '80', '14');
    await waitFor(async () => expect(await airOfDay(desk, work.sculpture)).toMatchObject({ air: '16', surface: '14' }));
    unmount();
    const { unmount: again } = show(desk, <CareDayScreen sculpture={work.sculpture} />);
    expect(await screen.findByDisplayValue('80')).toBeDefined();
    expect(await airOfDay({ ...desk, today: () => '2026-10-16' }, work.sculpture)).toBeUndefined();
    await user.click(await screen.findByRole('button', { name: 'Keep this reading' }));
    await screen.findByRole('table');
    again();
    show(desk, <CareDayScreen sculpture={work.sculpture} />);
    await screen.findByRole('table');
    expect(screen.queryByDisplayValue('80')).toBeNull();
  });

  it('takes the newest tin of the product used last where the old tin is gone', async () => {
    const { desk, work } = await heron();
    const wax = { name: 'Paste', sort: 'microcrystalline' };
    const old = await done(addPlanned(desk, 'product', { ...wax, batch: 'W-25A', ended: '2026-04-01' }));
    await done(addPlanned(desk, 'product', { ...wax, batch: 'W-26A', opened: '2026-04-20' }));
    await done(addPlanned(desk, 'product', { ...wax, batch: 'W-26B', opened: '2026-06-20' }));
    await done(addPlanned(desk, 'product', { name: 'Other wax', sort: 'microcrystalline', opened: '2026-07-01' }));
    const last = { zones: [], type: 'wax', date: '2025-05-20', product: 'paste', stock: old.thing };
    await done(recordTreatment(desk, work.sculpture, last));
    show(desk, <CareDayScreen sculpture={work.sculpture} />);
    const chosen = await screen.findByRole<HTMLSelectElement>('combobox', { name: 'Which product' });
    expect(chosen.selectedOptions[0]?.textContent).toBe('Paste, W-26B');
  });

  it('says wait with the reason, keeps the reading, and lists it among those of the day', async () => {
    const { desk, work } = await heron();
    show(desk, <CareDayScreen sculpture={work.sculpture} />);
    const user = await read('16', '80', '14');
    const answer = screen.getByRole('status');
    expect(within(answer).getByText('Wait')).toBeDefined();
    expect(within(answer).getByText(/1\.4 K over the dew point of 12\.6 °C; it takes 3 K, so 15\.6 °C/)).toBeDefined();
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Keep this reading' }));
    const table = await screen.findByRole('table');
    expect(within(table).getByText('Wait')).toBeDefined();
    expect(await bodies(desk, 'weather')).toMatchObject([
      { date: '2026-10-15', before: 'wax', air: 16, humidity: 80, surface: 14, dryHours: 24, said: 'wait' },
    ]);
    expect(screen.getByText(/the answer comes here/)).toBeDefined();
  });

  it('lets her go on all the same only with who and why, and keeps both', async () => {
    const { desk, work } = await heron();
    show(desk, <CareDayScreen sculpture={work.sculpture} />);
    const user = await read('16', '80', '14');
    await user.click(screen.getByRole('button', { name: 'Go on all the same' }));
    const sheet = screen.getByRole('dialog');
    await user.click(within(sheet).getByRole('button', { name: 'Keep it and go on' }));
    expect(within(sheet).getByText('Say why.')).toBeDefined();
    expect(await bodies(desk, 'weather')).toEqual([]);
    await user.type(within(sheet).getByRole('textbox', { name: 'Who decides' }), 'Steward');
    await user.type(within(sheet).getByRole('textbox', { name: 'Why' }), 'The wind dries it');
    await user.click(within(sheet).getByRole('button', { name: 'Keep it and go on' }));
    expect(await screen.findByText('Gone on all the same. Steward: The wind dries it')).toBeDefined();
    expect(await bodies(desk, 'weather')).toMatchObject([
      { said: 'wait', overridden: { by: 'Steward', why: 'The wind dries it' } },
    ]);
  });

  it('goes by the limits of the tin that was used last', async () => {
    const { desk, work } = await heron();
    const tin = { name: 'Winter wax', sort: 'natural wax', surfaceFrom: 5, surfaceTo: 20 };
    const { thing } = await done(addPlanned(desk, 'product', tin));
    await done(addPlanned(desk, 'product', { name: 'Summer wax', sort: 'natural wax' }));
    await done(recordTreatment(desk, work.sculpture, { zones: [], type: 'wax', date: '2025-05-20', stock: thing }));
    show(desk, <CareDayScreen sculpture={work.sculpture} />);
    await read('24', '40', '25');
    expect(screen.getByText(/“Winter wax” asks for 20 °C at most/)).toBeDefined();
  });

  it('records the wax in two touches: the tin, the coats and the people of last time, on the reading of the day', async () => {
    const { desk, work } = await heron();
    const { thing: stock } = await done(
      addPlanned(desk, 'product', { name: 'Cold paste wax', sort: 'microcrystalline', batch: 'W-26A', unit: 'g' }),
    );
    const last = { type: 'wax', date: '2025-05-20', product: 'Cold paste wax', stock, coats: 2 };
    await done(recordTreatment(desk, work.sculpture, { ...last, zones: [], people: [{ role: 'Helper', hours: 3 }] }));
    const before = { before: 'wax', air: 18, humidity: 50, surface: 18, dryHours: 24, said: 'go' } as const;
    const { thing: weather } = await done(
      addPlanned(desk, 'weather', { sculpture: work.sculpture, date: '2026-10-15', time: '15:30', ...before }),
    );
    const user = userEvent.setup();
    show(desk, <CareDayScreen sculpture={work.sculpture} />);
    await user.click(await screen.findByRole('button', { name: 'Record the work' }));
    expect(screen.getByText('Goes with the reading of 15:30: Go.')).toBeDefined();
    expect(screen.queryByRole('note', { name: /A different product/ })).toBeNull();
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Write it down' }));
    await waitFor(async () => expect(await bodies(desk, 'treatment')).toHaveLength(2));
    const written = await screen.findByRole('note', { name: /Written down: Cold wax/ });
    expect(within(written).getByRole('link', { name: 'Look at it' }).getAttribute('href')).toMatch(/look$/);
    expect((await bodies(desk, 'treatment')).find(({ date }) => date === '2026-10-15')).toEqual({
      ...{ sculpture: work.sculpture, type: 'wax', date: '2026-10-15', zones: [], product: 'Cold paste wax' },
      ...{ batch: 'W-26A', stock, coats: 2, weather, people: [{ role: 'Helper' }] },
    });
  });

  it('warns of a product that differs from last time, zone by zone, and keeps why', async () => {
    const { desk, work } = await heron();
    const old = { zones: [work.zones[1]!], type: 'wax', date: '2025-05-20', product: 'Old wax' };
    await done(recordTreatment(desk, work.sculpture, old));
    await done(addPlanned(desk, 'product', { name: 'New wax', sort: 'microcrystalline' }));
    const user = userEvent.setup();
    show(desk, <CareDayScreen sculpture={work.sculpture} />);
    await user.click(await screen.findByRole('button', { name: 'Record the work' }));
    await user.click(screen.getByRole('radio', { name: 'The whole work' }));
    const warned = screen.getByRole('note', { name: /A different product from last time/ });
    expect(within(warned).getByText('Zone B: Old wax, 20 May 2025.')).toBeDefined();
    await user.type(within(warned).getByRole('textbox', { name: /Why another/ }), 'No longer made');
    await user.click(screen.getByRole('button', { name: 'Write it down' }));
    await waitFor(async () => expect(await bodies(desk, 'treatment')).toHaveLength(2));
    expect((await bodies(desk, 'treatment'))[1]).toMatchObject({
      product: 'New wax',
      note: 'A different product from last time: No longer made',
    });
  });

  it('does not write down a wax of no zone, or hours that are no number', async () => {
    const { desk, work } = await heron();
    const user = userEvent.setup();
    show(desk, <CareDayScreen sculpture={work.sculpture} />);
    await user.click(await screen.findByRole('button', { name: 'Record the work' }));
    await user.click(screen.getByRole('radio', { name: 'Some zones' }));
    await user.click(screen.getByRole('button', { name: 'Add a person' }));
    await user.type(screen.getByRole('textbox', { name: 'Role' }), 'Helper');
    await user.type(screen.getByRole('textbox', { name: /Hours/ }), 'long');
    await user.click(screen.getByRole('button', { name: 'Write it down' }));
    expect(screen.getByText('Choose at least one zone.')).toBeDefined();
    expect(screen.getByText('A number of hours: 2.5.')).toBeDefined();
    expect(await bodies(desk, 'treatment')).toEqual([]);
  });
});
