import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { addSculpture, addSentinel, addStation, addStations } from '../../../src/actions';
import { StationsScreen } from '../../../src/screens/stations';
import { w } from '../../../src/words';
import { axeFaults } from '../axe';
import { aWork, done, freshDesk, show } from '../deskwork';

const words = w.stations;

describe('The stations of a work', () => {
  it('begins with four sides at one touch, each looking at the work from its own', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk(1);
    const { sculpture } = await aWork(desk, { title: 'Heron', number: '2', areas: [1] });
    show(desk, <StationsScreen sculpture={sculpture} />);
    expect(await screen.findByText(words.emptyTitle)).toBeDefined();
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: words.beginFour }));
    await screen.findByText(/From the north/);
    const rows = screen.getAllByRole('button', { name: /Middle of the work/ }).filter((b) => b.className === 'line');
    expect(rows.map((row) => /looks [a-z]+/.exec(row.textContent ?? '')?.[0])).toEqual([
      'looks south',
      'looks west',
      'looks north',
      'looks east',
    ]);
    expect(await axeFaults()).toEqual([]);
  });

  it('keeps what is typed of a station, and says which figure is none', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk(2);
    const { sculpture } = await aWork(desk, { title: 'Heron', number: '2', areas: [1] });
    show(desk, <StationsScreen sculpture={sculpture} />);
    await user.click(await screen.findByRole('button', { name: words.add }));
    const sheet = within(screen.getByRole('dialog', { name: words.add }));
    await user.click(sheet.getByRole('button', { name: words.form.keep }));
    expect(sheet.getByText(words.form.aimMissing)).toBeDefined();
    await user.type(sheet.getByRole('textbox', { name: words.form.aim }), 'the beak');
    await user.type(sheet.getByRole('textbox', { name: /^From the work/ }), 'far');
    await user.click(sheet.getByRole('button', { name: words.form.keep }));
    expect(sheet.getByText(words.form.number)).toBeDefined();
    await user.clear(sheet.getByRole('textbox', { name: /^From the work/ }));
    await user.type(sheet.getByRole('textbox', { name: /^From the work/ }), '4,5');
    await user.type(sheet.getByRole('textbox', { name: /^Looks to/ }), '255');
    await user.type(sheet.getByRole('textbox', { name: /^How the spot is found again/ }), 'brass stud');
    expect(await axeFaults()).toEqual([]);
    await user.click(sheet.getByRole('button', { name: words.form.keep }));
    const row = await screen.findByRole('button', { name: /the beak/ });
    expect(row.textContent).toMatch(/brass stud.*looks west \(255°\).*4\.5\sm from the work.*in open shade.*dry/);
  });

  it('refuses a figure that cannot be, and leaves the sheet open with what was typed', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk(3);
    const { sculpture } = await aWork(desk, { title: 'Heron', number: '2', areas: [1] });
    await done(addStation(desk, sculpture, { aim: 'the beak' }));
    show(desk, <StationsScreen sculpture={sculpture} />);
    await user.click(await screen.findByRole('button', { name: /the beak/ }));
    const sheet = within(screen.getByRole('dialog', { name: words.edit('A') }));
    await user.type(sheet.getByRole('textbox', { name: /^Looks to/ }), '400');
    await user.click(sheet.getByRole('button', { name: words.form.keep }));
    expect((await sheet.findByRole('alert')).textContent).toMatch(/between 0 and 360/);
    expect(sheet.getByRole<HTMLInputElement>('textbox', { name: /^Looks to/ }).value).toBe('400');
  });

  it('moves a station in the walk, and the first cannot go up', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk(4);
    const { sculpture } = await aWork(desk, { title: 'Heron', number: '2', areas: [1] });
    await done(addStations(desk, sculpture, [{ aim: 'beak' }, { aim: 'tail' }]));
    show(desk, <StationsScreen sculpture={sculpture} />);
    const up = await screen.findByRole('button', { name: words.up(words.nameOf('A', 'beak')) });
    expect(up).toHaveProperty('disabled', true);
    await user.click(screen.getByRole('button', { name: words.down(words.nameOf('A', 'beak')) }));
    await waitFor(() => {
      const first = screen.getAllByRole('listitem')[0];
      expect(first?.textContent).toContain('tail');
    });
  });

  it('takes a station away and says that its photos stay', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk(5);
    const { sculpture } = await aWork(desk, { title: 'Heron', number: '2', areas: [1] });
    await done(addStation(desk, sculpture, { aim: 'beak' }));
    show(desk, <StationsScreen sculpture={sculpture} />);
    await user.click(await screen.findByRole('button', { name: /beak/ }));
    await user.click(screen.getByRole('button', { name: words.form.remove }));
    expect(await screen.findByText(words.emptyTitle)).toBeDefined();
  });

  it('stands with forty stations of long names', async () => {
    const desk = await freshDesk(6);
    const { sculpture } = await aWork(desk, { title: 'Frieze '.repeat(40), number: '4', areas: [1] });
    const rows = Array.from({ length: 40 }, (_, i) => ({ aim: `${'hand '.repeat(30)}${i}`, mark: 'slab '.repeat(50) }));
    await done(addStations(desk, sculpture, rows));
    show(desk, <StationsScreen sculpture={sculpture} />);
    await screen.findByText('AN');
    expect(screen.getAllByRole('button', { name: /^Move Station/ })).toHaveLength(80);
  });

  it('says so where the work is not on this tablet', async () => {
    show(await freshDesk(7), <StationsScreen sculpture="sculpture/none" />);
    expect(await screen.findByRole('heading', { name: w.sculptures.work.notHere })).toBeDefined();
  });
});

describe('Sentinel squares', () => {
  const squares = words.squares;

  it('are chosen in a zone, with how the frame is laid on again; nothing is kept until all is said', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk(8);
    const { sculpture, zones } = await aWork(desk, { title: 'Heron', number: '2', areas: [1, 2] });
    show(desk, <StationsScreen sculpture={sculpture} />);
    await user.click(await screen.findByRole('button', { name: squares.add }));
    const sheet = within(screen.getByRole('dialog', { name: squares.add }));
    await user.click(sheet.getByRole('button', { name: squares.keep }));
    for (const text of [squares.whichMissing, squares.zoneMissing, squares.findMissing])
      expect(sheet.getByText(text)).toBeDefined();
    expect(await axeFaults()).toEqual([]);
    await user.click(sheet.getByRole('radio', { name: squares.whichWords.worst }));
    await user.selectOptions(sheet.getByRole('combobox', { name: squares.zone }), zones[1] ?? '');
    await user.type(sheet.getByRole('textbox', { name: squares.find }), 'under the seam');
    await user.click(sheet.getByRole('button', { name: squares.keep }));
    const row = await screen.findByRole('button', { name: /Worst square, zone B, part B/ });
    expect(row.textContent).toMatch(/under the seam.*since 15 October 2026/);
    expect(screen.queryByText(squares.onlyBest)).toBeNull();
    expect(screen.getByText(squares.onlyWorst)).toBeDefined();
  });

  it('warns that a second worst square ends the series of the first, and lets no square be moved', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk(9);
    const { sculpture, zones } = await aWork(desk, { title: 'Heron', number: '2', areas: [1, 2] });
    await done(addSentinel(desk, sculpture, { zone: zones[0] ?? '', which: 'worst', find: 'at the rim' }));
    show(desk, <StationsScreen sculpture={sculpture} />);
    await user.click(await screen.findByRole('button', { name: squares.add }));
    await user.click(screen.getByRole('radio', { name: squares.whichWords.worst }));
    expect(screen.getByText(squares.another('worst'))).toBeDefined();
    await user.click(screen.getByRole('button', { name: w.parts.closeSheet }));
    await user.click(screen.getByRole('button', { name: /Worst square/ }));
    expect(screen.getByText(squares.fixed)).toBeDefined();
    expect(screen.queryByRole('combobox', { name: squares.zone })).toBeNull();
  });

  it('need a zone to lie in', async () => {
    const desk = await freshDesk(10);
    const { sculpture } = await done(addSculpture(desk, { number: '3', title: 'Bather' }));
    show(desk, <StationsScreen sculpture={sculpture} />);
    expect(await screen.findByText(squares.noZones)).toBeDefined();
    expect(screen.queryByRole('button', { name: squares.add })).toBeNull();
  });
});
