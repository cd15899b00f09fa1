import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { addPlanned, keepPhoto, recordTreatment, setPlanned } from '../../../src/actions';
import { nameOf } from '../../../src/engine/record';
import { LogbookScreen } from '../../../src/screens/logbook';
import { w } from '../../../src/words';
import { jpeg, tiff } from '../../device/photo/camera';
import { axeFaults } from '../axe';
import { aWork, done, freshDesk, show } from '../deskwork';
import { cameraFile, withoutBytes } from '../photos/cameraFile';

const heron = async () => {
  const desk = await freshDesk();
  return { desk, work: await aWork(desk, { title: 'Grey heron', number: '2', areas: [2, 1] }) };
};
type Desk = Awaited<ReturnType<typeof freshDesk>>;
const treatments = async (desk: Desk) =>
  (await desk.store.ofKind('treatment')).filter(({ gone }) => !gone).map(({ lead }) => lead.body);
const open = async (type: string) => {
  const user = userEvent.setup();
  await user.click(await screen.findByRole('button', { name: 'Write an entry' }));
  await user.click(screen.getByRole('radio', { name: type }));
  await user.click(screen.getByRole('button', { name: /^More:/ }));
  return user;
};

afterEach(() => vi.restoreAllMocks());

describe('An entry of the logbook in full', () => {
  it('keeps several days, people with hours, cost in the one currency that was asked for, and what was not reached', async () => {
    const { desk, work } = await heron();
    show(desk, <LogbookScreen sculpture={work.sculpture} />);
    const user = await open('Local treatment');
    await user.clear(screen.getByLabelText('Day'));
    await user.type(screen.getByLabelText('Day'), '2024-06-12');
    await user.type(screen.getByLabelText(/Last day, if several/), '2024-06-13');
    await user.click(screen.getByRole('button', { name: 'Add a person' }));
    await user.type(screen.getByRole('textbox', { name: 'Role' }), 'Conservator');
    await user.type(screen.getByRole('textbox', { name: /^Hours/ }), '14,5');
    await user.type(screen.getByRole('textbox', { name: /^Cost/ }), '1 250');
    await user.type(screen.getByRole('textbox', { name: /Currency/ }), 'eur');
    await user.type(screen.getByRole('textbox', { name: /What was not reached/ }), 'under the bench');
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Write it down' }));
    await waitFor(async () => expect(await treatments(desk)).toHaveLength(1));
    expect(await treatments(desk)).toEqual([
      {
        ...{ sculpture: work.sculpture, type: 'local treatment', date: '2024-06-12', ended: '2024-06-13', zones: [] },
        ...{ people: [{ role: 'Conservator', hours: 14.5 }], cost: { minor: 125_000, currency: 'EUR' } },
        left: 'under the bench',
      },
    ]);
    const line = await screen.findByRole('button', { name: /Local treatment/ });
    expect(within(line).getByText('12 June 2024 to 13 June 2024')).toBeDefined();
    expect(within(line).getByText(/Conservator 14\.5 h · EUR 1,250/)).toBeDefined();
    expect(within(line).getByText('Not reached: under the bench')).toBeDefined();
    expect(within(line).getByText('The series breaks here.')).toBeDefined();
  });

  it('refuses a cost that is no amount, hours that are none, and a last day before the first, each in a sentence', async () => {
    const { desk, work } = await heron();
    await done(addPlanned(desk, 'moneyRules', rules));
    show(desk, <LogbookScreen sculpture={work.sculpture} />);
    const user = await open('Wash');
    await user.type(screen.getByRole('textbox', { name: /^Cost/ }), '-5');
    await user.click(screen.getByRole('button', { name: 'Add a person' }));
    await user.type(screen.getByRole('textbox', { name: 'Role' }), 'Helper');
    await user.type(screen.getByRole('textbox', { name: /^Hours/ }), 'many');
    await user.click(screen.getByRole('button', { name: 'Write it down' }));
    expect(screen.getByText(/below nothing/)).toBeDefined();
    expect(screen.getByText('A number of hours: 2.5.')).toBeDefined();
    await user.clear(screen.getByRole('textbox', { name: /^Cost/ }));
    await user.clear(screen.getByRole('textbox', { name: /^Hours/ }));
    await user.type(screen.getByLabelText(/Last day, if several/), '2026-10-01');
    await user.click(screen.getByRole('button', { name: 'Write it down' }));
    expect(await screen.findByText(/1 October 2026 lies before 15 October 2026/)).toBeDefined();
    expect(await treatments(desk)).toEqual([]);
  });

  it('takes product and batch from a tin of the store, how much of it went, and the reading it was done on', async () => {
    const { desk, work } = await heron();
    const tin = { name: 'Cold paste wax', sort: 'microcrystalline', batch: 'W-26A', unit: 'g' } as const;
    const { thing: stock } = await done(addPlanned(desk, 'product', tin));
    const air = { before: 'wax', air: 18, humidity: 50, surface: 18, dryHours: 24, said: 'go' } as const;
    const { thing: weather } = await done(
      addPlanned(desk, 'weather', { sculpture: work.sculpture, date: '2026-10-15', time: '15:30', ...air }),
    );
    show(desk, <LogbookScreen sculpture={work.sculpture} />);
    const user = await open('Cold wax');
    await user.click(screen.getByRole('radio', { name: 'From the store' }));
    await user.selectOptions(screen.getByRole('combobox', { name: 'Which one' }), stock);
    await user.type(screen.getByRole('textbox', { name: /How much was used/ }), '60');
    await user.selectOptions(screen.getByRole('combobox', { name: /Reading of the air/ }), weather);
    await user.click(screen.getByRole('button', { name: 'Write it down' }));
    await waitFor(async () => expect(await treatments(desk)).toHaveLength(1));
    expect(await treatments(desk)).toMatchObject([
      { product: 'Cold paste wax', batch: 'W-26A', stock, used: 60, weather, coats: 1 },
    ]);
    const line = await screen.findByRole('button', { name: /Cold wax/ });
    expect(within(line).getByText(/Cold paste wax, batch W-26A/)).toBeDefined();
    expect(within(line).getByText(/Go at 15:30, 10\.6 K over dew/)).toBeDefined();
    expect(within(line).getByText('A hold starts here.')).toBeDefined();
  });

  it('does not write down the batch of a tin that is gone for the same product again', async () => {
    const { desk, work } = await heron();
    const tin = { name: 'Paste', sort: 'microcrystalline', batch: 'W-25A', ended: '2026-04-01' };
    const { thing: stock } = await done(addPlanned(desk, 'product', tin));
    const last = { zones: [], type: 'wax', date: '2025-05-20', product: 'Paste', batch: 'W-25A', stock };
    await done(recordTreatment(desk, work.sculpture, last));
    show(desk, <LogbookScreen sculpture={work.sculpture} />);
    const user = await open('Cold wax');
    await user.click(screen.getByRole('radio', { name: 'The same product as last time' }));
    await user.click(screen.getByRole('button', { name: 'Write it down' }));
    await waitFor(async () => expect(await treatments(desk)).toHaveLength(2));
    const written = (await treatments(desk)).find(({ date }) => date === '2026-10-15');
    expect(written).toMatchObject({ product: 'Paste' });
    expect(written).not.toHaveProperty('batch');
    expect(written).not.toHaveProperty('stock');
  });

  it('says which strip this would be, and keeps the square metres taken away', async () => {
    const { desk, work } = await heron();
    await done(recordTreatment(desk, work.sculpture, { zones: [], type: 'strip', date: '1998' }));
    await done(recordTreatment(desk, work.sculpture, { zones: [], type: 'strip', date: '2011' }));
    show(desk, <LogbookScreen sculpture={work.sculpture} />);
    const user = await open('Stripped to the metal');
    expect(screen.getByText('This would be the third time metal is taken off.')).toBeDefined();
    await user.type(screen.getByRole('textbox', { name: /Square metres taken away/ }), '0,4');
    await user.click(screen.getByRole('button', { name: 'Write it down' }));
    await waitFor(async () => expect(await treatments(desk)).toHaveLength(3));
    expect((await treatments(desk)).find(({ takenAway }) => takenAway === 0.4)).toBeDefined();
  });

  it('shows photos before and after, and keeps what it does not show when another field is mended', async () => {
    const { desk: plain, work } = await heron();
    const desk = withoutBytes(plain);
    const file = cameraFile(jpeg({ exif: tiff(true, { taken: '2026:05:20 09:00:00' }), xmp: 'x' }), 'x.jpg');
    const { photo } = await done(keepPhoto(desk, work.sculpture, file, 'other'));
    const full = { zones: [], type: 'wash', date: '2026-05-20', photosBefore: [photo], ended: '2026-05-21' };
    await done(
      recordTreatment(desk, work.sculpture, { ...full, people: [{ role: 'Helper', name: 'Imagined', hours: 2 }] }),
    );
    const user = userEvent.setup();
    show(desk, <LogbookScreen sculpture={work.sculpture} />);
    await user.click(await screen.findByRole('button', { name: /Wash/ }));
    await user.click(screen.getByRole('button', { name: /^More:/ }));
    expect(await screen.findByText(w.parts.photoElsewhere)).toBeDefined();
    await user.type(screen.getByRole('textbox', { name: /^Note/ }), 'cold day');
    await user.click(screen.getByRole('button', { name: 'Keep the changes' }));
    await waitFor(async () => expect((await treatments(desk))[0]?.note).toBe('cold day'));
    expect((await treatments(desk))[0]).toMatchObject({
      ...full,
      people: [{ role: 'Helper', name: 'Imagined', hours: 2 }],
    });
  });
});

describe('What else stands in the logbook', () => {
  it('are incidents, moves and layers of colour among the lines, in order of date', async () => {
    const { desk, work } = await heron();
    const { sculpture, zones } = work;
    await done(
      addPlanned(desk, 'incident', {
        ...{ sculpture, date: '2026-01-12', sort: 'storm', what: 'A branch lay on it', danger: 'none' },
      }),
    );
    await done(
      addPlanned(desk, 'move', { sculpture, sort: 'loan out', from: 'the quay', to: 'the hall', left: '2026-02-01' }),
    );
    const campaign = nameOf.campaign('1');
    await done(
      setPlanned(desk, 'campaign', campaign, { sculpture, title: 'Colour', opened: '2026-03-01', step: 'work' }),
    );
    const layer = { sculpture, campaign, zone: zones[1]!, date: '2026-03-02', solution: 'ferric nitrate' };
    await done(addPlanned(desk, 'layer', { ...layer, order: 1 }));
    await done(addPlanned(desk, 'layer', { ...layer, order: 2 }));
    await done(recordTreatment(desk, sculpture, { zones: [], type: 'wash', date: '2026-02-15' }));
    show(desk, <LogbookScreen sculpture={sculpture} />);
    await screen.findByRole('link', { name: /12 January 2026.*Storm/ });
    expect(screen.getAllByRole('listitem').map(({ textContent }) => textContent ?? '')).toEqual([
      expect.stringMatching(/2 March 2026.*Layers of colour.*Zone B.*2 layers/),
      expect.stringMatching(/15 February 2026.*Wash/),
      expect.stringMatching(/1 February 2026.*Loan out.*the quay to the hall/),
      expect.stringMatching(/12 January 2026.*Storm.*A branch lay on it/),
    ]);
    expect(await axeFaults()).toEqual([]);
  });
});

const rules = {
  version: 1,
  currency: 'EUR',
  rate: 0.03,
  growth: 0.04,
  contingency: 0.12,
  years: 20,
  spending: 0.04,
};
