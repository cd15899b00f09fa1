import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import { recordTreatment } from '../../../src/actions';
import { adviceOf, holdsOf, livesOf } from '../../../src/engine/hold';
import { OverTimeScreen } from '../../../src/screens/over-time';
import { Holds } from '../../../src/screens/over-time/Holds';
import { demoDay, saltlamp } from '../../engine/hold/saltlamp';
import { axeFaults } from '../axe';
import { aRound, aWork, done, freshDesk, show } from '../deskwork';

const waxed = async () => {
  const desk = await freshDesk();
  const work = await aWork(desk, { number: 'X-1', title: 'Tall One', areas: [2, 1] });
  for (const [i, cover] of [0.05, 0.1, 0.15, 0.2, 0.3].entries()) {
    await aRound(desk, work, `${2022 + i}-05-12`, [
      { 'green-spots': cover },
      i === 2 ? { notLooked: 'reach' } : 'nothing',
    ]);
    await done(
      recordTreatment(desk, work.sculpture, { type: 'wax', date: `${2022 + i}-05-20`, zones: [...work.zones] }),
    );
  }
  return { desk, work };
};

it('says first in words what each series shows, then draws it', async () => {
  const { desk, work } = await waxed();
  show(desk, <OverTimeScreen sculpture={work.sculpture} />);
  expect(
    await screen.findByText(/The condition index falls by .* points a year .*: a trend over 5 rounds\./),
  ).toBeDefined();
  expect(screen.getByRole('img', { name: /^Condition index: 5 rounds/ })).toBeDefined();
  expect(screen.getByText(/The area of active green rises by/)).toBeDefined();
  expect(screen.getAllByText(/Over the zones seen in every round: 1 zone/)).toHaveLength(2);
  expect(screen.getAllByRole('img', { name: 'not looked at' })).toHaveLength(1);
  expect(document.body.textContent).not.toMatch(/NaN|Infinity|undefined/);
  expect(await axeFaults()).toEqual([]);
});

it('shows the zone that was chosen, with its own coatings and what takes off its index', async () => {
  const user = userEvent.setup();
  const { desk, work } = await waxed();
  show(desk, <OverTimeScreen sculpture={work.sculpture} />);
  await user.selectOptions(await screen.findByLabelText('Show'), 'Zone A, part A');
  const zone = screen.getByRole('article', { name: 'Zone A, part A' });
  expect(within(zone).getByText(/On it now: coated 20 May 2026; nobody has looked since/)).toBeDefined();
  expect(screen.queryByRole('article', { name: 'Zone B, part B' })).toBeNull();
  expect(screen.getByText(/points are missing from 100/)).toBeDefined();
});

it('names no day to wax for a zone on which a stop word stands', async () => {
  const all = saltlamp.map((record) => ({ record, zones: holdsOf(record, demoDay) }));
  const lives = livesOf(all, 1);
  const told = all.map(({ record, zones }) => ({
    record,
    holds: zones,
    advice: adviceOf(record, zones, lives, demoDay),
  }));
  const asksWax = (one: { waxAgainBy: unknown; asksConservator: boolean }) => one.waxAgainBy && !one.asksConservator;
  const { record, holds, advice } = told.find((work) => work.advice.some(asksWax))!;
  const zone = advice.find(asksWax)!.zone;
  const shown = (here: typeof record) =>
    show(desk, <Holds record={here} insights={{ holds, advice } as never} only={zone} nameOf={() => undefined} />);
  const desk = await freshDesk();
  const { unmount } = shown(record);
  expect(screen.getByText(/^Wax again/)).toBeDefined();
  unmount();
  const last = [...record.rounds].sort((a, b) => a.body.date.localeCompare(b.body.date)).at(-1)!;
  const one = record.findings[0]!;
  const body = { ...one.body, zone, round: last.thing, kind: 'green-under-film' };
  shown({ ...record, findings: [...record.findings, { ...one, body }] });
  expect(screen.getByText(/^Not yet: a stop word was seen here/)).toBeDefined();
  expect(screen.queryByText(/^Wax again/)).toBeNull();
});

it('says of a zone whose surface became another one from when its growth is told', async () => {
  const desk = await freshDesk();
  const work = await aWork(desk, { number: 'X-4', title: 'Half Stripped', areas: [2, 2] });
  for (const [i, cover] of [0.1, 0.2, 0.05, 0.3].entries()) {
    await aRound(desk, work, `${2022 + i}-05-12`, [{ 'green-spots': cover }, { 'green-spots': 0.1 + i / 20 }]);
  }
  await done(
    recordTreatment(desk, work.sculpture, { type: 'strip', date: '2023-09-04', zones: work.zones.slice(0, 1) }),
  );
  show(desk, <OverTimeScreen sculpture={work.sculpture} />);
  expect(await screen.findByText(/^zone A, part A \(from 12 May 2024\)$/)).toBeDefined();
  expect(screen.getByText('zone B, part B')).toBeDefined();
});

it('of a work without a round, and of one that is not here, says what to do', async () => {
  const desk = await freshDesk();
  const work = await aWork(desk, { number: 'X-2', title: 'New One', areas: [1] });
  show(desk, <OverTimeScreen sculpture={work.sculpture} />);
  expect(await screen.findByText(/The years begin with the first/)).toBeDefined();
  show(desk, <OverTimeScreen sculpture="sculpture/none" />);
  expect(await screen.findByText('This sculpture is not on this device.')).toBeDefined();
});

it('of one round and no coating says what comes when', async () => {
  const desk = await freshDesk();
  const work = await aWork(desk, { number: 'X-3', title: 'Once', areas: [1] });
  await aRound(desk, work, '2026-05-12', [{ 'green-spots': 0.1 }]);
  show(desk, <OverTimeScreen sculpture={work.sculpture} />);
  expect(
    await screen.findByText(/The condition index: 1 round since the surface last became another one/),
  ).toBeDefined();
  expect(screen.getByText(/Holds begin with the first wax in the logbook/)).toBeDefined();
  expect(screen.getByText(/No zone changed in active area/)).toBeDefined();
});
