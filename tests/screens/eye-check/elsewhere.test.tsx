import { screen, waitFor, within } from '@testing-library/react';
import { afterEach, describe, expect, it } from 'vitest';
import { addSurveyor, type Desk, sayPatch, setSetting, startEyeCheck } from '../../../src/actions';
import { ladderStepOf } from '../../../src/engine/trade';
import { MethodScreen } from '../../../src/screens/method';
import { EndRoundScreen } from '../../../src/screens/round';
import { SettingsScreen } from '../../../src/screens/settings';
import { ThenAndNowScreen } from '../../../src/screens/then-and-now';
import { axeFaults } from '../axe';
import { aRound, aWork, done, freshDesk, show } from '../deskwork';

afterEach(() => setSetting('surveyor', ''));

const onStep = (share: number) => {
  const { value, low, high } = ladderStepOf(share);
  return { value, low, high, method: 'ladder' as const };
};

/** A check in which this eye said `times` what is there. */
const checkMade = async (desk: Desk, surveyor: string, times: number) => {
  await done(startEyeCheck(desk, surveyor));
  for (const truth of [0.006, 0.015, 0.03, 0.04, 0.06, 0.09, 0.12, 0.18, 0.3, 0.4, 0.5, 0.7])
    await done(sayPatch(desk, surveyor, { truth, said: onStep(Math.min(0.95, truth * times)) }));
};

const garden = async (seed: number) => {
  const desk = await freshDesk(seed);
  const { surveyor } = await done(addSurveyor(desk, { role: 'Steward' }));
  const work = await aWork(desk, { title: 'One', number: '1', areas: [2] });
  const by = { round: { surveyor } };
  const rounds = [
    await aRound(desk, work, '2025-05-12', [{ 'even-green-film': 0.05 }], by),
    await aRound(desk, work, '2026-05-12', [{ 'even-green-film': 0.4 }], by),
  ] as const;
  return { desk, surveyor, work, rounds };
};

describe('An eye that is known', () => {
  it('stands in the settings beside who surveys, with what it rests on; one that is not is said to be assumed', async () => {
    const { desk, surveyor } = await garden(71);
    await done(addSurveyor(desk, { role: 'Helper' }));
    await checkMade(desk, surveyor, 1);
    show(desk, <SettingsScreen />);
    const table = await screen.findByRole('table', { name: 'Eyes of this collection' });
    const [, steward, helper] = within(table).getAllByRole('row');
    expect(steward?.textContent).toMatch(/^Steward0\.\d+012$/);
    expect(helper?.textContent).toBe('Helper0.3, assumed00');
    expect(screen.getByRole('link', { name: 'Eye check' }).getAttribute('href')).toBe('/eye-check');
    expect(await axeFaults()).toEqual([]);
  });

  it('puts the corrected figure beside what was entered, once it leans, and leaves the entry as it is', async () => {
    const { desk, surveyor, work } = await garden(72);
    await checkMade(desk, surveyor, 2.2);
    const before = await desk.store.ofKind('finding');
    show(desk, <ThenAndNowScreen sculpture={work.sculpture} />);
    const now = await screen.findByText(/^corrected for the eye check: about 1\d %$/);
    expect(now.closest('td')?.textContent).toMatch(/^40 %/);
    expect(screen.getAllByText(/^corrected for the eye check/)).toHaveLength(2);
    expect(await screen.findByText(/^What Steward judged is held to that person’s own error/)).toBeDefined();
    expect(await desk.store.ofKind('finding')).toEqual(before);
    expect(await axeFaults()).toEqual([]);
  });

  it('corrects nothing where no lean is shown', async () => {
    const { desk, surveyor, work } = await garden(73);
    await checkMade(desk, surveyor, 1);
    show(desk, <ThenAndNowScreen sculpture={work.sculpture} />);
    await screen.findByText(/^What Steward judged is held to that person’s own error/);
    expect(screen.queryByText(/corrected for the eye check/)).toBeNull();
  });
});

describe('An eye that is not known yet', () => {
  it('is said to be assumed where changes are told, with the way to an eye check', async () => {
    const { desk, work } = await garden(74);
    show(desk, <ThenAndNowScreen sculpture={work.sculpture} />);
    expect(await screen.findByText(/the usual error is assumed/)).toBeDefined();
    expect(screen.getByRole('link', { name: 'Make an eye check' }).getAttribute('href')).toBe('/eye-check');
  });

  it('is asked for at the end of a round, until a check is made', async () => {
    const { desk, surveyor, rounds } = await garden(75);
    const first = show(desk, <EndRoundScreen round={rounds[1]} />);
    expect(await screen.findByRole('link', { name: 'Make an eye check' })).toBeDefined();
    first.unmount();
    await checkMade(desk, surveyor, 1.2);
    show(desk, <EndRoundScreen round={rounds[1]} />);
    await screen.findByRole('heading', { name: 'What changed for sure' });
    await waitFor(() => expect(screen.queryByRole('link', { name: 'Make an eye check' })).toBeNull());
  });
});

describe('How is this worked out?', () => {
  it('says how the error of an eye becomes known, with the rows the sums use', async () => {
    const { desk, surveyor } = await garden(76);
    await checkMade(desk, surveyor, 1);
    show(desk, <MethodScreen />);
    expect(await screen.findByRole('heading', { name: 'The error of an eye' })).toBeDefined();
    const numbers = await screen.findByRole('table', { name: 'Numbers the error of an eye rests on' });
    expect(within(numbers).getByRole('rowheader', { name: /No eye is held to be steadier/ })).toBeDefined();
    expect(await screen.findByRole('table', { name: 'Eyes of this collection' })).toBeDefined();
  });
});
