import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { addSurveyor, leaveZone, startRound, touchZone } from '../../../src/actions';
import { EndRoundScreen, RoundScreen, StartRoundScreen } from '../../../src/screens/round';
import { pathTo } from '../../../src/screens/shell';
import { aRound, aWork, done, freshDesk, show } from '../deskwork';

const underWay = async () => {
  const desk = await freshDesk();
  const work = await aWork(desk, { title: 'Test figure', number: 'T-1', areas: [1, 2, 1] });
  await aRound(desk, work, '2025-05-12', [{ 'even-green-film': 0.2 }, { 'even-green-film': 0.1 }, 'nothing']);
  const start = { type: 'annual', date: '2026-05-12', wet: 'dry', washed: 'before wash', ownEye: false } as const;
  const { round } = await done(startRound(desk, work.sculpture, start));
  return { desk, work, round, zones: work.zones as [string, string, string] };
};

const judge = async ({ desk, round, zones }: Awaited<ReturnType<typeof underWay>>) => {
  await done(touchZone(desk, round, zones[0], { do: 'open', key: 'even-green-film/metal' }));
  const coverage = { value: 0.5, low: 0.45, high: 0.6, method: 'ladder' as const };
  await done(touchZone(desk, round, zones[0], { do: 'cover', coverage }));
  await done(leaveZone(desk, round, zones[0], { how: 'next' }));
};

describe('the list of zones', () => {
  it('says where the walk stands and goes on with the next zone', async () => {
    const given = await underWay();
    await judge(given);
    show(given.desk, <RoundScreen round={given.round} />);
    expect(await screen.findByText('1 of 3 zones answered')).toBeDefined();
    expect(screen.getAllByRole('listitem').map((li) => li.textContent)).toEqual([
      'Apart Asomething found',
      'Bpart Bnot yet',
      'Cpart Cnot yet',
    ]);
    expect(screen.getByRole('link', { name: 'Go on with zone B' }).getAttribute('href')).toBe(
      pathTo.zoneInRound(given.round, given.zones[1]),
    );
  });

  it('of a round that is not here says so', async () => {
    show(await freshDesk(), <RoundScreen round="round/none" />);
    expect(await screen.findByText('This round is not on this device')).toBeDefined();
  });
});

describe('the end of a round', () => {
  it('asks once more before it sums up, without the first value, and may be skipped', async () => {
    const given = await underWay();
    await judge(given);
    await done(leaveZone(given.desk, given.round, given.zones[1], { how: 'not looked', reason: 'wet' }));
    await done(leaveZone(given.desk, given.round, given.zones[2], { how: 'as last year' }));
    const user = userEvent.setup();
    show(given.desk, <EndRoundScreen round={given.round} />);
    expect(await screen.findByRole('heading', { name: /Once more: zone A/ })).toBeDefined();
    expect(document.querySelectorAll('[aria-pressed="true"]')).toHaveLength(0);
    await user.click(screen.getByRole('button', { name: 'Skip this' }));
    expect(await screen.findByRole('heading', { name: 'What is missing' })).toBeDefined();
  });

  it('says first what was not looked at, carried, and left without a photo, then the index and what changed', async () => {
    const given = await underWay();
    await judge(given);
    await done(leaveZone(given.desk, given.round, given.zones[1], { how: 'not looked', reason: 'wet' }));
    await done(leaveZone(given.desk, given.round, given.zones[2], { how: 'as last year' }));
    const user = userEvent.setup();
    show(given.desk, <EndRoundScreen round={given.round} />);
    await user.click(await screen.findByRole('button', { name: 'about 50 %' }));
    expect(await screen.findByText('1 zone not looked at')).toBeDefined();
    expect(screen.getByText('B: too wet to judge')).toBeDefined();
    expect(screen.getByText('1 zone carried, not judged again')).toBeDefined();
    expect(screen.getByText('1 finding without a photo')).toBeDefined();
    expect(await screen.findByText('25 % of the area was looked at and judged.')).toBeDefined();
    expect(await screen.findByRole('img', { name: /condition index \d+ of 100, between/ })).toBeDefined();
    expect(await screen.findByText(/Zone A, even green film: 20 % then, 50 % now/)).toBeDefined();
  });

  it('with zones left names them, goes on with the next, and closing offers to carry it out', async () => {
    const given = await underWay();
    await judge(given);
    const user = userEvent.setup();
    show(given.desk, <EndRoundScreen round={given.round} />);
    expect(await screen.findByText('2 zones have no answer yet')).toBeDefined();
    expect(screen.getByRole('link', { name: 'Go on with zone B' })).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'Close the round' }));
    expect((await screen.findByRole('link', { name: 'Carry it out' })).getAttribute('href')).toBe(pathTo.carry());
  });
});

describe('starting a round', () => {
  const form = async () => {
    const desk = await freshDesk();
    await done(addSurveyor(desk, { role: 'Steward' }));
    const work = await aWork(desk, { title: 'Test figure', number: 'T-1', areas: [1] });
    const view = show(desk, <StartRoundScreen sculpture={work.sculpture} />);
    return { desk, work, user: userEvent.setup(), ...view };
  };

  it('names the day on the button that confirms it, and goes to the first zone', async () => {
    const { user, history } = await form();
    await user.click(await screen.findByRole('radio', { name: 'Dry' }));
    await user.click(screen.getByRole('radio', { name: 'Before washing' }));
    await user.click(screen.getByRole('button', { name: 'Start the round of 15 October 2026' }));
    await waitFor(() => expect(history.at(-1)).toMatch(/^\/round\/.+\/zone\//));
  });

  it('assumes nothing about the surface: dry, damp or wet has to be said', async () => {
    const { user, history } = await form();
    await user.click(await screen.findByRole('button', { name: /Start the round/ }));
    expect(await screen.findByText(/Say whether the surface is dry, damp or wet/)).toBeDefined();
    expect(history).toHaveLength(1);
  });

  it('sends a work without zones to its zones', async () => {
    const desk = await freshDesk();
    const work = await aWork(desk, { title: 'Bare', number: 'T-2', areas: [] });
    show(desk, <StartRoundScreen sculpture={work.sculpture} />);
    expect((await screen.findByRole('link', { name: 'Add zones' })).getAttribute('href')).toBe(
      pathTo.zones(work.sculpture),
    );
  });
});
