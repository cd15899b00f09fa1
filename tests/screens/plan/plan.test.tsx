import { screen } from '@testing-library/react';
import { expect, it } from 'vitest';
import { addPlanned, recordTreatment, removePlanned, setPlanned } from '../../../src/actions';
import { nameOf } from '../../../src/engine/record';
import { PlanOfWorkScreen, PlanScreen } from '../../../src/screens/plan';
import { axeFaults } from '../axe';
import { aWork, done, freshDesk, show } from '../deskwork';

it('leads everywhere and says that nothing is there yet, without a work', async () => {
  show(await freshDesk(), <PlanScreen />);
  expect(await screen.findByText('No sculpture yet. Add one first.')).toBeDefined();
  const links = screen.getAllByRole('link').map((link) => link.getAttribute('href'));
  for (const place of ['/due', '/year', '/budget', '/funds', '/decisions', '/incidents', '/products', '/grounds'])
    expect(links).toContain(place);
  expect(await axeFaults()).toEqual([]);
});

it('says of each work where its plan stands: the campaign under way before the verdict of a year', async () => {
  const desk = await freshDesk();
  const { sculpture } = await aWork(desk, { number: 'Q-1', title: 'Invented', areas: [1] });
  show(desk, <PlanScreen />);
  expect(await screen.findByRole('link', { name: /Q-1 Invented.*Nothing planned/ })).toBeDefined();
  const verdict = {
    sculpture,
    year: 2025,
    verdict: 'treat locally',
    why: 'x',
    by: 'Steward',
    date: '2025-12-01',
  } as const;
  await done(setPlanned(desk, 'yearVerdict', nameOf.yearVerdict(sculpture, 2025), verdict));
  expect(await screen.findByRole('link', { name: /Q-1 Invented.*2025: treat locally/ })).toBeDefined();
  const { thing } = await done(
    addPlanned(desk, 'campaign', { sculpture, title: 'Strip it', opened: '2026-01-02', step: 'money' }),
  );
  expect(await screen.findByRole('link', { name: /Q-1 Invented.*Strip it/ })).toBeDefined();
  await done(removePlanned(desk, 'campaign', thing));
  expect(await screen.findByRole('link', { name: /Q-1 Invented.*treat locally/ })).toBeDefined();
});

it('counts for one work what is decided, forbidden and stripped', async () => {
  const desk = await freshDesk();
  const { sculpture } = await aWork(desk, { number: 'Q-1', title: 'Invented', areas: [1] });
  const sheet = { sculpture, allowed: [], forbidden: ['pressure washer'], alsoForbidden: ['the ladder on the wing'] };
  await done(setPlanned(desk, 'methodSheet', nameOf.methodSheet(sculpture), sheet));
  await done(recordTreatment(desk, sculpture, { zones: [], type: 'strip', date: '2019' }));
  await done(recordTreatment(desk, sculpture, { zones: [], type: 'wax', date: '2020-05-01' }));
  show(desk, <PlanOfWorkScreen sculpture={sculpture} />);
  expect(await screen.findByRole('link', { name: /What may be done.*2 things forbidden/ })).toBeDefined();
  expect(screen.getByRole('link', { name: /Metal ledger.*1 entry/ })).toBeDefined();
  expect(screen.getByRole('link', { name: /Logbook.*2 treatments/ })).toBeDefined();
  expect(screen.getByRole('link', { name: /Access sheet.*Not written yet/ })).toBeDefined();
  expect(await axeFaults()).toEqual([]);
});

it('says that a work is not here', async () => {
  show(await freshDesk(), <PlanOfWorkScreen sculpture="sculpture/none" />);
  expect(await screen.findByText(/not on this device/)).toBeDefined();
});
