import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { addSurveyor, type Desk, sayPatch, setSetting, startEyeCheck } from '../../../src/actions';
import { patchOf } from '../../../src/engine/eye';
import { ladderStepOf } from '../../../src/engine/trade';
import { EyeCheckScreen } from '../../../src/screens/eye-check';
import { axeFaults } from '../axe';
import { done, freshDesk, show } from '../deskwork';

const drawn: Uint8ClampedArray[] = [];

beforeEach(() => {
  drawn.length = 0;
  vi.stubGlobal(
    'ImageData',
    class {
      readonly data: Uint8ClampedArray;
      constructor(data: Uint8ClampedArray) {
        this.data = data;
      }
    },
  );
  const pen = { putImageData: ({ data }: { data: Uint8ClampedArray }) => void drawn.push(data) };
  vi.spyOn(HTMLCanvasElement.prototype, 'getContext').mockReturnValue(pen as never);
});

afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
  setSetting('surveyor', '');
});

const withSteward = async (seed: number): Promise<{ desk: Desk; surveyor: string }> => {
  const desk = await freshDesk(seed);
  const { surveyor } = await done(addSurveyor(desk, { role: 'Steward' }));
  setSetting('surveyor', surveyor);
  return { desk, surveyor };
};

const onStep = (share: number) => {
  const { value, low, high } = ladderStepOf(share);
  return { value, low, high, method: 'ladder' as const };
};

/** A finished check: `times` what is there, as far as the ladder goes. */
const checkMade = async (desk: Desk, surveyor: string, times: number) => {
  await done(startEyeCheck(desk, surveyor));
  for (const truth of [0.006, 0.015, 0.03, 0.04, 0.06, 0.09, 0.12, 0.18, 0.3, 0.4, 0.5, 0.7])
    await done(sayPatch(desk, surveyor, { truth, said: onStep(Math.min(0.95, truth * times)) }));
};

const seedNow = async (desk: Desk, surveyor: string): Promise<number> =>
  ((await desk.store.meta(`eye check ${surveyor}`)) as { seed: number }).seed;

describe('The eye check', () => {
  it('shows twelve patches one after another, drawn as the engine draws them, and makes one check of them', async () => {
    const user = userEvent.setup();
    const { desk, surveyor } = await withSteward(61);
    show(desk, <EyeCheckScreen />);
    await user.click(await screen.findByRole('button', { name: 'Begin' }));
    for (let patch = 1; patch <= 12; patch++) {
      const drill = await screen.findByRole('region', { name: `Patch ${patch} of 12` });
      await within(drill).findByRole('img', { name: 'Drawn bronze with green on it' });
      if (patch === 3) {
        expect(drawn.at(-1)).toEqual(patchOf(await seedNow(desk, surveyor), 2).pixels);
        expect(await axeFaults()).toEqual([]);
      }
      await user.click(within(drill).getByRole('button', { name: patch % 2 ? 'about 5 %' : 'about 20 %' }));
    }
    expect(await screen.findByRole('heading', { name: 'What is known of Steward’s eye' })).toBeDefined();
    const [check] = await desk.store.ofKind('eyeCheck');
    expect(check?.lead.body).toMatchObject({ surveyor, date: '2026-10-15' });
    expect(check?.lead.body.patches).toHaveLength(12);
  });

  it('tells nothing of what is true while it goes on', async () => {
    const user = userEvent.setup();
    const { desk, surveyor } = await withSteward(62);
    show(desk, <EyeCheckScreen />);
    await user.click(await screen.findByRole('button', { name: 'Begin' }));
    const drill = await screen.findByRole('region', { name: 'Patch 1 of 12' });
    await within(drill).findByRole('img', { name: 'Drawn bronze with green on it' });
    const truth = patchOf(await seedNow(desk, surveyor), 0).truth;
    expect(drill.textContent).not.toContain((truth * 100).toFixed(1));
    expect(drill.outerHTML).not.toContain(String(truth));
  });

  it('can be stopped, taken up again where it stood, one patch back, or begun anew', async () => {
    const user = userEvent.setup();
    const { desk, surveyor } = await withSteward(63);
    const first = show(desk, <EyeCheckScreen />);
    await user.click(await screen.findByRole('button', { name: 'Begin' }));
    for (const patch of [1, 2, 3]) {
      const drill = await screen.findByRole('region', { name: `Patch ${patch} of 12` });
      await within(drill).findByRole('img', { name: 'Drawn bronze with green on it' });
      await user.click(within(drill).getByRole('button', { name: 'about 10 %' }));
    }
    await screen.findByRole('region', { name: 'Patch 4 of 12' });
    await user.click(screen.getByRole('button', { name: 'Stop for now' }));
    expect(await screen.findByText(/3 of 12 patches are judged/)).toBeDefined();
    first.unmount();

    show(desk, <EyeCheckScreen />);
    await user.click(await screen.findByRole('button', { name: 'Go on at patch 4 of 12' }));
    await screen.findByRole('region', { name: 'Patch 4 of 12' });
    await user.click(screen.getByRole('button', { name: 'The patch before' }));
    await screen.findByRole('region', { name: 'Patch 3 of 12' });
    await user.click(screen.getByRole('button', { name: 'Stop for now' }));
    const before = await seedNow(desk, surveyor);
    await user.click(await screen.findByRole('button', { name: 'Begin anew' }));
    await screen.findByRole('region', { name: 'Patch 1 of 12' });
    expect(await seedNow(desk, surveyor)).not.toBe(before);
    expect(await desk.store.ofKind('eyeCheck')).toEqual([]);
  });

  it('says in plain words what an answer of this eye stands for, that it leans, and what is used from now on', async () => {
    const { desk, surveyor } = await withSteward(64);
    await checkMade(desk, surveyor, 2.2);
    show(desk, <EyeCheckScreen />);
    const line = await screen.findByText(/^Where this eye says 20 %, the truth is likely about/);
    const [, value, low, high] =
      /about ([\d.]+) %, between ([\d.]+) % and ([\d.]+) %/.exec((line.textContent ?? '').replaceAll('\u00a0', ' ')) ??
      [];
    expect(Number(value)).toBeLessThan(15);
    expect(Number(low)).toBeLessThan(Number(value));
    expect(Number(high)).toBeGreaterThan(Number(value));
    expect(screen.getByText(/^It leans: where 10 % is true, it says about 2\d %/)).toBeDefined();
    expect(screen.getByText(/no score or verdict uses the corrected one/)).toBeDefined();
    expect(document.body.textContent).not.toMatch(/NaN|Infinity|score of|points|well done/i);
  });

  it('draws the curve with its numbers in tables behind it', async () => {
    const user = userEvent.setup();
    const { desk, surveyor } = await withSteward(65);
    await checkMade(desk, surveyor, 1.6);
    show(desk, <EyeCheckScreen />);
    await screen.findByRole('img', { name: 'What this eye said of patches of known coverage' });
    await user.click(screen.getByRole('button', { name: 'Show the patches as a table' }));
    expect(within(screen.getByRole('table', { name: 'Patches of this eye' })).getAllByRole('row')).toHaveLength(13);
    expect(within(screen.getByRole('table', { name: 'The curve' })).getAllByRole('row').length).toBeGreaterThan(5);
    expect(await axeFaults()).toEqual([]);
  });

  it('removes a check that should not count', async () => {
    const user = userEvent.setup();
    const { desk, surveyor } = await withSteward(66);
    await checkMade(desk, surveyor, 1.3);
    show(desk, <EyeCheckScreen />);
    await user.click(await screen.findByRole('button', { name: 'Remove the check of 15 October 2026' }));
    expect(await screen.findByText('Not known yet')).toBeDefined();
    expect(screen.queryByRole('img', { name: /What this eye said/ })).toBeNull();
  });

  it('is made for one of several people, by choice', async () => {
    const user = userEvent.setup();
    const { desk } = await withSteward(67);
    await done(addSurveyor(desk, { role: 'Helper' }));
    show(desk, <EyeCheckScreen />);
    expect(await screen.findByRole('radio', { name: 'Steward' })).toHaveProperty('checked', true);
    await user.click(screen.getByRole('radio', { name: 'Helper' }));
    expect(await screen.findByRole('heading', { name: 'What is known of Helper’s eye' })).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('asks first who surveys where nobody is named', async () => {
    const desk = await freshDesk(68);
    show(desk, <EyeCheckScreen />);
    const link = await screen.findByRole('link', { name: 'Say who surveys' });
    expect(link.getAttribute('href')).toBe('/settings');
    await waitFor(() => expect(screen.queryByRole('button', { name: 'Begin' })).toBeNull());
  });
});
