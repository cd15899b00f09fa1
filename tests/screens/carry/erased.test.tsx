import { screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import {
  acceptImport,
  addSurveyor,
  type Desk,
  eraseName,
  openSurveyFile,
  prepareSurvey,
  setUpCollection,
} from '../../../src/actions';
import { CarryScreen } from '../../../src/screens/carry';
import { axeFaults } from '../axe';
import { aWork, done, freshDesk, show } from '../deskwork';

const fileOf = async (desk: Desk): Promise<File> => {
  const { prepared } = await done(prepareSurvey(desk));
  return new File([prepared.bytes], prepared.name, { type: prepared.mime });
};
const openFile = (file: File) => userEvent.upload(screen.getByLabelText('Open a survey file or bag'), file);

const two = async () => {
  const home = await freshDesk();
  await done(setUpCollection(home, { name: 'Quay garden', role: 'Steward' }));
  await aWork(home, { title: 'Grey heron', number: '2', areas: [2] });
  const { surveyor } = await done(addSurveyor(home, { role: 'Helper', name: 'Ann Lee' }));
  const away = await freshDesk(77);
  const before = await fileOf(home);
  const opened = await openSurveyFile(away, before);
  if (!opened.ok) throw new Error(opened.reason.code);
  await done(acceptImport(away, opened.preview));
  await done(eraseName(home, surveyor, { reason: 'Asked for it', alsoIn: [] }));
  return { home, away, before };
};

it('a file in which something was erased says, before it is taken, what will go here and why', async () => {
  const { home, away } = await two();
  show(away, <CarryScreen />);
  await openFile(await fileOf(home));
  expect(await screen.findByText('Erased elsewhere: 1 entry here will go for good')).toBeDefined();
  expect(screen.getByText('A name, 15 October 2026: Asked for it')).toBeDefined();
  expect(screen.getByText('1 entry here was erased elsewhere')).toBeDefined();
  expect(await axeFaults()).toEqual([]);
  const accept = screen.getByRole('button', { name: 'Carry it in' });
  expect(accept).toHaveProperty('disabled', true);
  await userEvent.click(screen.getByRole('checkbox', { name: 'Let it go here too' }));
  await userEvent.click(accept);
  await expect.poll(async () => JSON.stringify(await away.store.allEntries())).not.toContain('Ann Lee');
});

it('an older file says how much of it was erased here before and is not taken', async () => {
  const { home, before } = await two();
  show(home, <CarryScreen />);
  await openFile(before);
  expect(
    await screen.findByText('1 entry of the file was erased from this survey before and is not taken.'),
  ).toBeDefined();
});
