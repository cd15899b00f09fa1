import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { lastDeed } from '../../../src/actions';
import { BringScreen } from '../../../src/screens/bring';
import { axeFaults } from '../axe';
import { aWork, freshDesk, show } from '../deskwork';

const list = (text: string) => new File([text], 'wax book.csv', { type: 'text/csv' });
const text = [
  'Inv. no;Zone;Date;Treatment;Remark',
  '7;A;03/04/2019;Cold wax;in the sun',
  'The bird;;spring 2020;maintenance;',
  '7;Q;2021;wash;',
].join('\r\n');

const opened = async (content: string, seed = 1) => {
  const user = userEvent.setup();
  const desk = await freshDesk(seed);
  const work = await aWork(desk, { title: 'Heron', number: '7', areas: [1, 2] });
  await aWork(desk, { title: 'Deer', number: '8', areas: [1] });
  show(desk, <BringScreen />);
  await user.upload(await screen.findByLabelText('Choose the list'), list(content));
  const logbook = async () =>
    (await desk.store.within(work.sculpture, ['treatment'])).filter(({ gone }) => !gone).map(({ lead }) => lead.body);
  return { user, desk, work, logbook };
};

describe('Bringing in a list of treatments', () => {
  it('asks for what the list does not say, guesses nothing, and takes only rows it understood', async () => {
    const { user, logbook, work } = await opened(text);
    expect(await screen.findByText('wax book.csv: 4 rows, read as UTF-8.')).toBeDefined();
    expect(screen.getByText('0 rows can be taken over, 3 rows not.')).toBeDefined();
    expect(screen.getByRole('button', { name: 'Take 0 rows over' })).toHaveProperty('disabled', true);

    await user.click(screen.getByRole('radio', { name: /The day comes first/ }));
    await user.selectOptions(screen.getByLabelText('“The bird” means'), '7 Heron');
    await user.selectOptions(screen.getByLabelText('“maintenance” means'), 'Wash');
    expect(screen.getByText('2 rows can be taken over, 1 row not.')).toBeDefined();
    expect(screen.getByText(/no zone of the letter or name “Q”/)).toBeDefined();

    await user.click(screen.getByRole('button', { name: 'Take 2 rows over' }));
    await screen.findByLabelText('Choose the list');
    expect((await logbook()).sort((a, b) => (String(a.date) < String(b.date) ? -1 : 1))).toEqual([
      {
        sculpture: work.sculpture,
        zones: [work.zones[0]],
        type: 'wax',
        date: '2019-04-03',
        note: 'in the sun',
        source: 'wax book.csv',
      },
      { sculpture: work.sculpture, zones: [], type: 'wash', date: 'spring 2020', source: 'wax book.csv' },
    ]);
    expect(await axeFaults()).toEqual([]);
  });

  it('shows rows that stay out by themselves, as they stand in the list', async () => {
    const { user } = await opened('Work,Date,Treatment\n7,2019,wash\nGone,31.2.2019,wax\n', 2);
    await user.click(await screen.findByRole('radio', { name: 'Rows that stay out' }));
    const rows = screen.getAllByRole('listitem').filter((row) => within(row).queryByText(/^Line/));
    expect(rows.map((row) => within(row).getByText(/^Line/).textContent)).toEqual(['Line 3']);
    expect(screen.getByText('In the list: Gone · 31.2.2019 · wax')).toBeDefined();
    expect(screen.getByText(/is no day of the calendar/)).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('a column taken for something else is no longer taken for what it was', async () => {
    const { user } = await opened('Work,Date,Treatment,Comment\n7,2019,wash,2020\n', 3);
    await user.selectOptions(await screen.findByLabelText('Column 4, “Comment”'), 'Date');
    expect(screen.getByLabelText('Column 2, “Date”')).toHaveProperty('value', 'note');
    expect(screen.getByText('2020 · Wash')).toBeDefined();
  });

  it.each([
    ['', 'There is no row in this list.'],
    ['a,b\n1,"two\n', /quotation mark that opens in line 2 is never closed/],
    ['a,b\n'.repeat(2001), /has 2,001 rows/],
  ])('says in a sentence why a file is not read, and stores nothing', async (content, sentence) => {
    const { desk } = await opened(content, 4);
    expect((await screen.findByRole('alert')).textContent).toMatch(sentence);
    expect(JSON.stringify(lastDeed(desk).get() ?? '')).not.toContain('taken over');
  });

  it('says what to do where there is no work yet', async () => {
    show(await freshDesk(5), <BringScreen />);
    expect(await screen.findByText('There is no work here yet')).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });
});

describe('Bringing in an earlier report', () => {
  it('takes it over line by line, each about the zone chosen, and shows it apart', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk(6);
    const work = await aWork(desk, { title: 'Heron', number: '7', areas: [1, 2] });
    show(desk, <BringScreen />);
    await user.click(await screen.findByRole('radio', { name: /An earlier report/ }));
    await user.click(screen.getByRole('button', { name: 'Take 0 statements over' }));
    expect(screen.getByText('Say whose report it is.')).toBeDefined();
    expect(screen.getByText('Type what the report says.')).toBeDefined();
    await user.type(screen.getByLabelText('Whose report'), 'Conservator R.');
    await user.type(screen.getByLabelText('Of when'), 'before 1990');
    await user.type(screen.getByLabelText('Which report, and where it can be found'), 'Report on the Heron');
    await user.type(
      screen.getByLabelText('What it says, one statement a line'),
      '1. Wax thin{enter}- Armature rusting',
    );
    await user.selectOptions(screen.getByLabelText('About, line 1'), 'A part A');
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Take 2 statements over' }));
    expect(await screen.findByText('Conservator R., before 1990 · Zone A part A')).toBeDefined();
    const thoughts = await desk.store.within(work.sculpture, ['interpretation']);
    expect(thoughts.map(({ lead }) => lead.body.statement).sort()).toEqual(['Armature rusting', 'Wax thin']);
  });
});
