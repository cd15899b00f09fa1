import { screen, within } from '@testing-library/react';
import { expect, it } from 'vitest';
import { addSurveyor } from '../../../src/actions';
import { AgreementScreen } from '../../../src/screens/agreement';
import { axeFaults } from '../axe';
import { aRound, aWork, done, freshDesk, show } from '../deskwork';

const doneTwice = async () => {
  const desk = await freshDesk();
  const { surveyor: steward } = await done(addSurveyor(desk, { role: 'Steward' }));
  const { surveyor: helper } = await done(addSurveyor(desk, { role: 'Helper' }));
  const work = await aWork(desk, { number: 'X-1', title: 'Tall One', areas: [2, 1, 1, 1] });
  await aRound(
    desk,
    work,
    '2026-05-12',
    [{ 'green-spots': 0.1 }, { 'green-spots': 0.2 }, { 'green-spots': 0.05 }, 'nothing'],
    {
      round: { surveyor: steward },
    },
  );
  await aRound(
    desk,
    work,
    '2026-05-13',
    [
      { 'green-spots': 0.15 },
      { 'green-spots': 0.3 },
      { 'green-spots': 0.1, 'wax-white': 0.1 },
      { 'green-spots': 0.01 },
    ],
    { round: { surveyor: helper } },
  );
  return { desk, work };
};

it('says in plain words what two people agreed on, then where to look together, then the figures', async () => {
  const { desk, work } = await doneTwice();
  show(desk, <AgreementScreen sculpture={work.sculpture} />);
  expect(await screen.findByText('12 May 2026: Steward and Helper')).toBeDefined();
  expect(screen.getByText('All 4 zones were judged by both.')).toBeDefined();
  expect(screen.getByText('Of 5 things that either of you recorded, you both recorded 3.')).toBeDefined();
  expect(screen.getByText(/Where Steward says 20 %, Helper says about 3\d %/)).toBeDefined();
  const [apart, figures] = screen.getAllByRole('table');
  const rows = within(apart as HTMLElement).getAllByRole('row');
  expect(rows[1]?.textContent).toContain('recorded by one only');
  expect(within(figures as HTMLElement).getByRole('rowheader', { name: /Cohen/ })).toBeDefined();
  expect(within(figures as HTMLElement).getByText(/one and the same answer in all 3 cases/)).toBeDefined();
  expect(document.body.textContent).not.toMatch(/NaN|Infinity|undefined/);
  expect(await axeFaults()).toEqual([]);
});

it('says how to get there where no round was done twice', async () => {
  const desk = await freshDesk();
  const work = await aWork(desk, { number: 'X-2', title: 'Small One', areas: [1] });
  await aRound(desk, work, '2026-05-12', [{ 'green-spots': 0.1 }]);
  show(desk, <AgreementScreen sculpture={work.sculpture} />);
  expect(await screen.findByText('No round of this work was done twice yet.')).toBeDefined();
  expect(screen.getByText(/a second person makes the same round within two weeks/)).toBeDefined();
});

it('of a work that is not here says so', async () => {
  show(await freshDesk(), <AgreementScreen sculpture="sculpture/none" />);
  expect(await screen.findByText('This sculpture is not on this device.')).toBeDefined();
});
