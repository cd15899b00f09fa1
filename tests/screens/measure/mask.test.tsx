import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { MaskOf, MaskSeen } from '../../../src/actions';
import { checkDotsFor, type Point, type Refused, type Rgb } from '../../../src/engine/photo';
import { MeasureScreen } from '../../../src/screens/measure';
import { axeFaults } from '../axe';
import { show } from '../deskwork';
import { type OnPhoto, onPhoto, photo, touch } from './onPhoto';

/** Where the pixels would be counted: a mask of a quarter, its check dots along two rows, green left of the middle of the picture. */
const pixels = vi.hoisted(() => ({ asked: [] as unknown[], refuses: false }));

const seen = (): MaskSeen | Refused => {
  if (pixels.refuses)
    return { refused: [{ code: 'coverage: green and sound too alike', params: { apart: 2, least: 8, strays: 0 } }] };
  const laid = checkDotsFor(0.25);
  const row = (n: number, y: number): Point[] => Array.from({ length: n }, (_, i) => [0.3 + (0.4 * i) / n, y]);
  return {
    share: 0.25,
    leftOut: 0.02,
    judged: 90_000,
    inMask: row(laid.inMask, 0.4),
    outsideMask: row(laid.outsideMask, 0.6),
    overlay: 'blob:mask',
    reasons: [],
  };
};

vi.mock('../../../src/actions', async (actual) => {
  const told = new Map<string, MaskSeen | Refused>();
  return {
    ...(await actual<object>()),
    colourAt: async (_desk: unknown, _photo: string, [x]: Point) => ({
      ok: true,
      colour: (x < 0.5 ? [130, 180, 150] : [90, 60, 40]) as unknown as Rgb,
    }),
    maskOf: (_desk: unknown, _photo: string, of: MaskOf) => {
      const key = JSON.stringify(of);
      if (!told.has(key)) pixels.asked.push(of);
      told.set(key, told.get(key) ?? seen());
      return { subscribe: () => () => undefined, get: () => told.get(key) };
    },
  };
});

beforeEach(() => {
  URL.createObjectURL = () => 'blob:picture';
  URL.revokeObjectURL = vi.fn();
});

afterEach(() => {
  pixels.asked.length = 0;
  pixels.refuses = false;
});

const opened = (at: OnPhoto) => show(at.desk, <MeasureScreen photo={photo} about={at.zone} />);
const button = (name: string | RegExp) => screen.findByRole('button', { name });
/** A touch before what enables it was kept is none. */
const ready = async (name: string | RegExp) => {
  await waitFor(async () => expect((await button(name)).hasAttribute('disabled')).toBe(false));
  return button(name);
};
const measures = async ({ desk }: OnPhoto) => (await desk.store.ofKind('measure')).filter(({ gone }) => !gone);

/** Three spots of each sort. */
const tapped = async () => {
  for (const [n, x] of [0.3, 0.35, 0.4].entries()) {
    await button('Tap a spot: green');
    touch([x, 0.4], 'Tap a spot: green');
    await screen.findByText(n < 2 ? `Green: ${n + 1} of 3 spots` : 'Green: 3 spots');
  }
  for (const [n, x] of [0.6, 0.65, 0.7].entries()) {
    await button('Tap a spot: sound surface');
    touch([x, 0.4], 'Tap a spot: sound surface');
    await screen.findByText(n < 2 ? `Sound surface: ${n + 1} of 3 spots` : 'Sound surface: 3 spots');
  }
};

describe('The pixels of a photo', () => {
  it('make no figure by themselves: thirty check dots do, judged without the mask in sight', async () => {
    const user = userEvent.setup();
    const at = await onPhoto(31);
    opened(at);
    await user.click(await ready('Use the pixels'));
    await tapped();
    expect(await screen.findByText(/The mask takes in 25 %\. This is no figure yet/)).toBeDefined();
    expect(document.querySelector('image[href="blob:mask"]')).not.toBeNull();
    expect(await measures(at)).toHaveLength(0);
    expect(await axeFaults()).toEqual([]);
    await user.click(await ready('Lay the check dots'));
    for (let n = 1; n <= 30; n++) {
      const asked = await screen.findByRole('region', { name: `Check dot ${n} of 30` });
      expect(document.querySelector('image[href="blob:mask"]')).toBeNull();
      await user.click(
        within(asked).getByRole('button', { name: n <= checkDotsFor(0.25).inMask ? 'Green' : 'Not green' }),
      );
    }
    await screen.findByText(/Of \d+ check dots in it, 0 were not green/);
    await user.click(await ready('Back to the figures'));
    expect((await screen.findByRole('row', { name: /^pixels, checked/ })).textContent).toMatch(
      /25 %\d+ % to \d+ %of this photo/,
    );
    expect((await screen.findByRole('row', { name: /^by eye/ })).textContent).toMatch(/20 %/);
    const [kept] = await measures(at);
    expect(kept?.lead.body).toMatchObject({
      coverage: { method: 'photo', value: 0.25 },
      working: { maskShare: 0.25, leftOut: 0.02, green: [{ at: [0.3, 0.4] }, {}, {}], sound: [{}, {}, {}] },
    });
  });

  it('are put right with the brush, dab by dab; the last dab can be taken back', async () => {
    const user = userEvent.setup();
    const at = await onPhoto(32);
    opened(at);
    await user.click(await ready('Use the pixels'));
    await tapped();
    await user.click(await screen.findByRole('radio', { name: 'puts the mask right' }));
    await user.click(screen.getByRole('radio', { name: 'Large' }));
    touch([0.5, 0.5], 'Brush: sound surface');
    await vi.waitFor(() =>
      expect((pixels.asked.at(-1) as MaskOf).brush).toEqual([{ as: 'sound', radius: 0.04, path: [[0.5, 0.5]] }]),
    );
    const before = pixels.asked.length;
    await user.click(await ready('Undo the last touch of the brush'));
    await vi.waitFor(async () => {
      const metas = await at.desk.store.metas<{ working?: { brush?: unknown[] } }>('measuring measure/');
      expect(metas[0]?.[1].working?.brush).toEqual([]);
    });
    expect(pixels.asked).toHaveLength(before);
  });

  it('too alike to be told apart give no mask, and it is said why', async () => {
    const user = userEvent.setup();
    pixels.refuses = true;
    const at = await onPhoto(33);
    opened(at);
    await user.click(await ready('Use the pixels'));
    await tapped();
    expect(await screen.findByText('No figure can be told from this')).toBeDefined();
    expect((await button('Lay the check dots')).hasAttribute('disabled')).toBe(true);
  });

  it('go on at the check dot where they stopped, and a changed mask asks for all check dots anew', async () => {
    const user = userEvent.setup();
    const at = await onPhoto(34);
    const first = opened(at);
    await user.click(await ready('Use the pixels'));
    await tapped();
    await user.click(await ready('Lay the check dots'));
    for (let n = 1; n <= 4; n++) {
      const asked = await screen.findByRole('region', { name: `Check dot ${n} of 30` });
      await user.click(within(asked).getByRole('button', { name: 'Green' }));
    }
    await screen.findByRole('region', { name: 'Check dot 5 of 30' });
    first.unmount();
    opened(at);
    await screen.findByRole('region', { name: 'Check dot 5 of 30' });
    await user.click(await ready('The dot before'));
    await screen.findByRole('region', { name: 'Check dot 4 of 30' });
    await user.click(await ready('Change the mask'));
    await user.click(await ready('Lay the check dots'));
    await screen.findByRole('region', { name: 'Check dot 1 of 30' });
  });
});
