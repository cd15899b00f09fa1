import { act, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { setPhotoFit } from '../../../src/actions';
import type { Pair, Point } from '../../../src/engine/photo';
import { CompareScreen } from '../../../src/screens/compare';
import { axeFaults } from '../axe';
import { done, show } from '../deskwork';
import { type OnStation, onStation, touch } from './onStation';

beforeEach(() => {
  URL.createObjectURL = () => 'blob:picture';
  URL.revokeObjectURL = vi.fn();
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

const opened = ({ desk, work }: OnStation, one?: string, other?: string) =>
  show(desk, <CompareScreen sculpture={work.sculpture} one={one} other={other} />);

/** Corners of the picture and how they lie a little to the right; `off` spoils every other. */
const spots: readonly Point[] = [
  [0.2, 0.2],
  [0.7, 0.2],
  [0.2, 0.8],
  [0.7, 0.8],
];
const pairs = (off = 0): Pair[] =>
  spots.map(([x, y], i) => ({ from: [x, y], onto: [x + 0.05 + (i % 2 === 0 ? off : -off), y] }));

const laid = async (seed: number, off = 0, facts = {}) => {
  const at = await onStation(seed, [facts, {}]);
  const [photo = '', onto = ''] = at.photos;
  await done(setPhotoFit(at.desk, { photo, onto, kind: 'similarity', pairs: pairs(off) }));
  return at;
};
const surfaceOf = (which: 'earlier' | 'later', n: number) =>
  screen.findByRole('button', { name: `Place pair ${n} on the ${which} photo` });

describe('Two photos of one station', () => {
  it('asks for stations and photos where there is nothing to compare', async () => {
    opened(await onStation(31, [{}]));
    expect(await screen.findByText('Nothing to compare yet')).toBeDefined();
    expect(screen.getByRole('link', { name: 'Stations' })).toBeDefined();
  });

  it('shows the last two side by side, each with its day, and offers no other way to look', async () => {
    opened(await onStation(32, [{}, {}, {}]));
    expect(await screen.findByRole('img', { name: 'The earlier photo, 12 May 2022' })).toBeDefined();
    expect(screen.getByRole('img', { name: 'The later photo, 12 May 2023' })).toBeDefined();
    expect(screen.getByRole('note', { name: /Not laid on each other yet/ })).toBeDefined();
    expect(screen.queryByRole('radio', { name: 'Wipe' })).toBeNull();
    expect(await axeFaults()).toEqual([]);
  });

  it('says what they were not taken alike in, before anybody compares colours', async () => {
    opened(await onStation(33, [{}, { light: 'sun', wet: 'wet' }]));
    const notice = await screen.findByRole('note', { name: /not taken alike/ });
    expect(within(notice).getByText(/The light was overcast then and sun now/)).toBeDefined();
    expect(within(notice).getByText(/The surface was dry then and is wet now/)).toBeDefined();
  });

  it('puts the earlier first, whichever way round the address names them', async () => {
    const at = await onStation(34, [{}, {}]);
    opened(at, at.photos[1], at.photos[0]);
    expect(await screen.findByRole('img', { name: 'The earlier photo, 12 May 2021' })).toBeDefined();
  });

  it('goes to any other photo of the station that is chosen', async () => {
    const at = await onStation(35, [{}, {}, {}]);
    const { history } = opened(at);
    await userEvent.selectOptions(await screen.findByRole('combobox', { name: 'Earlier photo' }), at.photos[0] ?? '');
    expect(history.at(-1)).toMatch(/compare\/1{64}\/3{64}$/);
  });

  it('says so where a photo is gone, and where one is chosen twice', async () => {
    const at = await onStation(36, [{}, {}]);
    const first = opened(at, 'photo/gone', at.photos[0]);
    expect(await screen.findByText(/not in the record of this work any more/)).toBeDefined();
    first.unmount();
    opened(at, at.photos[0], at.photos[0]);
    expect(await screen.findByText(/the same photo twice/)).toBeDefined();
  });
});

describe('A photo without a picture', () => {
  it('is said to be one, and nothing is laid on it', async () => {
    opened(await onStation(37, [{ flaw: 'not shown', width: undefined, height: undefined }, {}]));
    expect(await screen.findByText(/could not show it. It is kept as it came/)).toBeDefined();
    expect(screen.queryByRole('button', { name: /Lay the earlier photo/ })).toBeNull();
  });
});

describe('Laying one on the other', () => {
  it('keeps each pair as soon as both ends are touched, and tells the residual at the fourth', async () => {
    const at = await onStation(41, [{}, {}]);
    opened(at);
    await userEvent.click(await screen.findByRole('button', { name: 'Lay the earlier photo on the later' }));
    for (const [i, { from, onto }] of pairs().entries()) {
      touch(await surfaceOf('earlier', i + 1), from);
      expect(await screen.findByText(`Pair ${i + 1}: now the same spot on the later photo.`)).toBeDefined();
      touch(await surfaceOf('later', i + 1), onto);
      await screen.findByText(new RegExp(`^${i + 1} (of 4 pairs|pairs; 4 are enough)`));
      const [kept] = await at.desk.store.ofKind('photoFit');
      expect(kept?.lead.body.pairs).toHaveLength(i + 1);
    }
    const verdict = await screen.findByRole('note', { name: /lie on each other well enough/ });
    expect(within(verdict).getByText(/Each of the 4 pairs lies about 0 % of the photo’s width/)).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('says how many are still needed, and more where a slanted plane is asked for', async () => {
    opened(await laid(42));
    await userEvent.click(await screen.findByRole('button', { name: 'Look at the pairs again' }));
    await userEvent.click(screen.getByRole('radio', { name: /As a slanted plane/ }));
    expect(await screen.findByText('4 of 6 pairs')).toBeDefined();
    expect(screen.getByText(/4 pairs of 6. Each is one spot/)).toBeDefined();
  });

  it('puts one end of a chosen pair right, and takes a pair away', async () => {
    const at = await laid(43, 0.02);
    opened(at);
    await userEvent.click(await screen.findByRole('button', { name: 'Look at the pairs again' }));
    await userEvent.click(screen.getByRole('button', { name: 'Put pair 2 right' }));
    touch(await surfaceOf('later', 2), [0.6, 0.3]);
    const onto = async () => (await at.desk.store.ofKind('photoFit'))[0]?.lead.body.pairs as Pair[] | undefined;
    await waitFor(async () => expect((await onto())?.[1]).toEqual({ from: [0.7, 0.2], onto: [0.6, 0.3] }));
    await userEvent.click(screen.getByRole('button', { name: 'Take pair 4 away' }));
    await waitFor(async () => expect(await onto()).toHaveLength(3));
    expect(await screen.findByText('3 of 4 pairs')).toBeDefined();
  });
});

describe('What the residual allows', () => {
  it('up to 1 %: wipe, blink and the change map', async () => {
    opened(await laid(51));
    for (const name of ['Side by side', 'Wipe', 'Blink', 'Change map'])
      expect(await screen.findByRole('radio', { name })).toBeDefined();
  });

  it('over 1 %: no change map is offered, and it is said why', async () => {
    opened(await laid(52, 0.008));
    const notice = await screen.findByRole('note', { name: /only roughly/ });
    expect(within(notice).getByText(/no change map is drawn of them/)).toBeDefined();
    expect(screen.getByRole('radio', { name: 'Blink' })).toBeDefined();
    expect(screen.queryByRole('radio', { name: 'Change map' })).toBeNull();
  });

  it('over 3 %: not the same station, side by side only', async () => {
    opened(await laid(53, 0.05));
    expect(await screen.findByRole('note', { name: /Not the same station/ })).toBeDefined();
    expect(screen.queryByRole('radio', { name: 'Wipe' })).toBeNull();
  });

  it('wipes without a drag: buttons and keys move the edge', async () => {
    opened(await laid(54));
    const bar = await screen.findByRole('slider', { name: /How much of the earlier photo shows/ });
    expect(bar.getAttribute('aria-valuetext')).toBe('50 % earlier, the rest later');
    await userEvent.click(screen.getByRole('button', { name: 'More of the earlier' }));
    expect(bar.getAttribute('aria-valuetext')).toBe('60 % earlier, the rest later');
  });

  it('blinks at a touch, and by itself only until it is stopped', async () => {
    opened(await laid(55));
    await userEvent.click(await screen.findByRole('radio', { name: 'Blink' }));
    await userEvent.click(screen.getByRole('button', { name: 'Show the earlier' }));
    expect(screen.getByText('Earlier: 12 May 2021')).toBeDefined();
    vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval'] });
    const press = (name: string) => act(() => screen.getByRole('button', { name }).click());
    press('Blink');
    act(() => void vi.advanceTimersByTime(1000));
    expect(screen.getByText('Later: 12 May 2022')).toBeDefined();
    press('Stop');
    act(() => void vi.advanceTimersByTime(5000));
    expect(screen.getByText('Later: 12 May 2022')).toBeDefined();
  });

  it('does not move by itself for whoever asked for no motion', async () => {
    vi.stubGlobal('matchMedia', (query: string) => ({ matches: query.includes('reduced-motion') }));
    opened(await laid(56));
    await userEvent.click(await screen.findByRole('radio', { name: 'Blink' }));
    expect(screen.queryByRole('button', { name: 'Blink' })).toBeNull();
    expect(screen.getByRole('button', { name: 'Show the earlier' })).toBeDefined();
    expect(screen.getByText(/avoid motion/)).toBeDefined();
  });

  it('asks for three spots of each sort on each photo before a change map is worked out', async () => {
    opened(await laid(57));
    await userEvent.click(await screen.findByRole('radio', { name: 'Change map' }));
    expect(screen.getByText(/Three green spots and three of sound surface on each photo/)).toBeDefined();
    expect(screen.getByRole('button', { name: 'Touch a spot of green on the earlier photo' })).toBeDefined();
    expect(screen.getAllByText('0 green, 0 sound')).toHaveLength(2);
    expect(screen.getByText(/Where to look, not a verdict/)).toBeDefined();
  });
});
