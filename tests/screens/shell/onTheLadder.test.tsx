import { act, fireEvent, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { addSculpture, fullUnderstood, setSetting } from '../../../src/actions';
import { attempt } from '../../../src/actions/outcome';
import { StoreProblem } from '../../../src/device/storeProblem';
import { idPart } from '../../../src/engine/record';
import { Shell } from '../../../src/screens/shell/Shell';
import { done, freshDesk } from '../deskwork';
import { hold } from '../hold';

beforeEach(() => vi.stubGlobal('matchMedia', () => ({ matches: false })));
afterEach(() => {
  vi.unstubAllGlobals();
  Reflect.deleteProperty(navigator, 'getBattery');
  setSetting('wetGlass', false);
  fullUnderstood();
});

const onTheLadder = async () => {
  const desk = await freshDesk();
  const { sculpture } = await done(addSculpture(desk, { number: '1', title: 'Bather' }));
  location.hash = `#/sculpture/${idPart(sculpture)}/look`;
  render(<Shell desk={desk} />);
  await screen.findByRole('heading', { level: 1 });
};

const battery = (level: number, charging = false) => {
  const told = Object.assign(new EventTarget(), { level, charging });
  Object.defineProperty(navigator, 'getBattery', { configurable: true, value: async () => told });
  return async (to: number) => {
    told.level = to;
    await act(async () => void told.dispatchEvent(new Event('levelchange')));
  };
};

/** A touch on the glass that lasts so many milliseconds. */
const touch = (on: HTMLElement, ms: number) => {
  const pointer = { pointerId: 7, pointerType: 'touch', bubbles: true, cancelable: true };
  const at = (type: string, timeStamp: number) => {
    const event = new PointerEvent(type, pointer);
    Object.defineProperty(event, 'timeStamp', { value: timeStamp });
    act(() => void on.dispatchEvent(event));
  };
  at('pointerdown', 1000);
  at('pointerup', 1000 + ms);
  at('click', 1000 + ms);
};

describe('In wet glass', () => {
  it('a touch as short as a drop does nothing, and one as long as a finger does', async () => {
    setSetting('wetGlass', true);
    await onTheLadder();
    const lock = await screen.findByRole('button', { name: 'Lock the glass' });
    touch(lock, 30);
    expect(screen.queryByRole('dialog')).toBeNull();
    touch(lock, 80);
    expect(await screen.findByRole('dialog', { name: 'The glass is locked' })).toBeDefined();
  });

  it('the locked glass opens to a hold, not to a tap nor to Escape', async () => {
    setSetting('wetGlass', true);
    await onTheLadder();
    await userEvent.click(await screen.findByRole('button', { name: 'Lock the glass' }));
    const lock = await screen.findByRole('dialog', { name: 'The glass is locked' });
    const open = within(lock).getByRole('button', { name: 'Hold down to go on' });
    await userEvent.click(open);
    fireEvent(lock, new Event('cancel', { cancelable: true }));
    expect(screen.getByRole('dialog', { name: 'The glass is locked' })).toBe(lock);
    await hold(open);
    expect(screen.queryByRole('dialog')).toBeNull();
  });

  it('keys and screen readers open it with one press: no drop of water has keys', async () => {
    setSetting('wetGlass', true);
    await onTheLadder();
    await userEvent.click(await screen.findByRole('button', { name: 'Lock the glass' }));
    (await screen.findByRole('button', { name: 'Hold down to go on' })).focus();
    await userEvent.keyboard('{Enter}');
    await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull());
  });

  it('is no part of a dry day', async () => {
    await onTheLadder();
    expect(screen.queryByRole('button', { name: 'Lock the glass' })).toBeNull();
  });
});

describe('A charge that goes to its end', () => {
  it('is told at 20 %, put away by one touch, and told once more at 10 %', async () => {
    const fall = battery(0.5);
    await onTheLadder();
    expect(screen.queryByText(/Battery at/)).toBeNull();
    await fall(0.19);
    expect(await screen.findByText('Battery at 19 %')).toBeDefined();
    await userEvent.click(screen.getByRole('button', { name: 'Understood' }));
    await fall(0.18);
    expect(screen.queryByText(/Battery at/)).toBeNull();
    await fall(0.1);
    expect(await screen.findByText('Battery at 10 %')).toBeDefined();
  });

  it('on the cable is not told', async () => {
    battery(0.05, true);
    await onTheLadder();
    expect(screen.queryByText(/Battery at/)).toBeNull();
  });
});

describe('A full tablet', () => {
  it('is told on every screen from the write that was refused until it is understood', async () => {
    await onTheLadder();
    expect(screen.queryByText('This tablet is full')).toBeNull();
    await act(async () => {
      await attempt(() => Promise.reject(new StoreProblem({ code: 'device full', params: { deed: '' } })));
    });
    expect(await screen.findByText('This tablet is full')).toBeDefined();
    expect(screen.getByRole('link', { name: 'Make room' }).getAttribute('href')).toBe('#/keeping');
    await userEvent.click(screen.getByRole('button', { name: 'Understood' }));
    expect(screen.queryByText('This tablet is full')).toBeNull();
  });
});
