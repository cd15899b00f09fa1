import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import {
  acceptImport,
  type Desk,
  editSculpture,
  openSurveyFile,
  prepareSurvey,
  setPlace,
  setUpCollection,
} from '../../../src/actions';
import { CarryScreen } from '../../../src/screens/carry';
import { aRound, aWork, done, freshDesk, show } from '../deskwork';

const fileOf = async (desk: Desk): Promise<File> => {
  const { prepared } = await done(prepareSurvey(desk));
  return new File([prepared.bytes], prepared.name, { type: prepared.mime });
};

const take = async (desk: Desk, file: File) => {
  const opened = await openSurveyFile(desk, file);
  if (!opened.ok) throw new Error(opened.reason.code);
  await done(acceptImport(desk, opened.preview));
};

const home = async () => {
  const desk = await freshDesk();
  await done(setUpCollection(desk, { name: 'Quay garden', role: 'Steward' }));
  const work = await aWork(desk, { title: 'Grey heron', number: '2', areas: [2] });
  const other = await aWork(desk, { title: 'Boat on the quay', number: '10', areas: [1] });
  return { desk, work, other };
};

/** A second tablet that took the first one's survey in. */
const away = async (from: Desk, seed = 77): Promise<Desk> => {
  const desk = await freshDesk(seed);
  await take(desk, await fileOf(from));
  return desk;
};

const openFile = (file: File) => userEvent.upload(screen.getByLabelText('Open a survey file or bag'), file);

describe('Carry out', () => {
  it('lists what the file still holds before it can leave', async () => {
    const user = userEvent.setup();
    const { desk, work } = await home();
    await done(setPlace(desk, work.sculpture, 'By the east steps'));
    show(desk, <CarryScreen />);
    expect(screen.queryByRole('button', { name: 'Download it' })).toBeNull();
    await user.click(await screen.findByRole('radio', { name: /^Survey without photos/ }));
    await user.click(await screen.findByRole('button', { name: 'Prepare the file' }));
    expect(await screen.findByRole('heading', { name: 'The file is ready. It still holds:' })).toBeDefined();
    expect(screen.getByText('Places')).toBeDefined();
    expect(screen.getByText('No photo stays behind.')).toBeDefined();
    await user.click(screen.getByRole('checkbox', { name: /^Places where the works stand/ }));
    expect(screen.queryByRole('heading', { name: 'The file is ready. It still holds:' })).toBeNull();
    await user.click(screen.getByRole('button', { name: 'Prepare the file' }));
    await screen.findByRole('heading', { name: 'The file is ready. It still holds:' });
    expect(screen.queryByText('Places')).toBeNull();
  });

  it('does not prepare a file of some sculptures when none is chosen, and says so', async () => {
    const user = userEvent.setup();
    const { desk } = await home();
    show(desk, <CarryScreen />);
    await user.click(await screen.findByRole('radio', { name: 'Some sculptures only' }));
    await user.click(screen.getByRole('button', { name: 'Prepare the bag' }));
    expect(screen.getByRole('alert').textContent).toContain('Choose at least one sculpture.');
  });

  it('shows the survey as text where a file cannot be saved', async () => {
    const user = userEvent.setup();
    const { desk } = await home();
    show(desk, <CarryScreen />);
    await user.click(await screen.findByRole('radio', { name: /^Survey without photos/ }));
    await user.click(await screen.findByRole('button', { name: 'Prepare the file' }));
    await user.click(await screen.findByRole('button', { name: 'Show as text' }));
    const text = (await screen.findByRole('textbox', { name: 'Show as text' })) as HTMLTextAreaElement;
    expect(text.value).toContain('patina-round-survey');
    expect(text.value).toContain('Grey heron');
  });
});

describe('Carry in', () => {
  it('shows per sculpture what would change, stores it in one go, and takes it back', async () => {
    const user = userEvent.setup();
    const { desk, work } = await home();
    const tablet = await away(desk);
    await aRound(tablet, work, '2026-05-10', [{ 'even-green-film': 0.2 }]);
    show(desk, <CarryScreen />);
    const before = (await desk.store.allEntries()).length;
    await openFile(await fileOf(tablet));
    const row = await screen.findByRole('row', { name: /2 Grey heron/ });
    expect(within(row).getAllByRole('cell')[0]?.textContent).toBe('3');
    expect((await desk.store.allEntries()).length).toBe(before);
    await user.click(screen.getByRole('button', { name: 'Carry it in' }));
    expect(await screen.findByRole('note', { name: /Carried in: 3 entries\./ })).toBeDefined();
    expect((await desk.store.allEntries()).length).toBe(before + 3);
    await user.click(screen.getByRole('button', { name: 'Take back what came in' }));
    expect(await screen.findByRole('note', { name: /Everything is as before/ })).toBeDefined();
    expect((await desk.store.allEntries()).length).toBe(before);
  });

  it('says that everything is here already, and has nothing to accept', async () => {
    const { desk } = await home();
    show(desk, <CarryScreen />);
    await screen.findByRole('button', { name: 'Prepare the bag' });
    await openFile(await fileOf(desk));
    expect(await screen.findByText('Everything in this file is already here.')).toBeDefined();
    expect(screen.getByRole('button', { name: 'Carry it in' })).toHaveProperty('disabled', true);
  });

  it('never puts another collection in before a person says so', async () => {
    const user = userEvent.setup();
    const { desk } = await home();
    const strange = await freshDesk(99);
    await done(setUpCollection(strange, { name: 'Harbour trust', role: 'Keeper' }));
    await aWork(strange, { title: 'Anchor', number: '1', areas: [1] });
    show(desk, <CarryScreen />);
    await screen.findByRole('button', { name: 'Prepare the bag' });
    await openFile(await fileOf(strange));
    const warning = await screen.findByRole('note', { name: /another collection/ });
    expect(warning.textContent).toContain('“Harbour trust”');
    expect(warning.textContent).toContain('“Quay garden”');
    const accept = screen.getByRole('button', { name: 'Carry it in' });
    expect(accept).toHaveProperty('disabled', true);
    await user.click(within(warning).getByRole('checkbox', { name: /two collections/ }));
    expect(accept).toHaveProperty('disabled', false);
  });

  it('says of a damaged file what is wrong and what to do, and stores nothing', async () => {
    const { desk } = await home();
    const file = await fileOf(desk);
    const before = (await desk.store.allEntries()).length;
    const cut = new File([(await file.text()).slice(0, -40)], 'cut.survey.json', { type: 'application/json' });
    show(desk, <CarryScreen />);
    await screen.findByRole('button', { name: 'Prepare the bag' });
    await openFile(cut);
    const problem = await screen.findByRole('alert');
    expect(problem.textContent).toContain('cut.survey.json');
    expect(problem.textContent).toContain('The file ends in the middle');
    expect(problem.textContent).toContain('What to do: Carry it out again on the device it comes from');
    expect((await desk.store.allEntries()).length).toBe(before);
  });

  it('points to what has two versions after two people changed the same thing apart', async () => {
    const user = userEvent.setup();
    const { desk, work } = await home();
    const tablet = await away(desk);
    await done(editSculpture(desk, work.sculpture, { number: '2', title: 'Heron' }));
    await done(editSculpture(tablet, work.sculpture, { number: '2', title: 'The grey heron' }));
    show(desk, <CarryScreen />);
    await screen.findByRole('button', { name: 'Prepare the bag' });
    await openFile(await fileOf(tablet));
    const row = await screen.findByRole('row', { name: /^2 / });
    expect(within(row).getAllByRole('cell')[2]?.textContent).toBe('1');
    await user.click(screen.getByRole('button', { name: 'Carry it in' }));
    const settle = await screen.findByRole('note', { name: /Two versions to settle/ });
    await waitFor(() => expect(settle.textContent).toContain('1 thing has two versions.'));
    expect(within(settle).getByRole('link', { name: 'Settle them' }).getAttribute('href')).toBe('/carry/settle');
  });
});
