import { render, screen, waitFor } from '@testing-library/react';
import { afterEach, describe, expect, it } from 'vitest';
import { addSculpture } from '../../../src/actions';
import { idPart } from '../../../src/engine/record';
import { Shell } from '../../../src/screens/shell/Shell';
import { done, freshDesk } from '../deskwork';

const asked: { released: boolean }[] = [];
const give = (request: () => Promise<unknown>) =>
  Object.defineProperty(navigator, 'wakeLock', { configurable: true, value: { request } });
const granted = () => {
  const lock = { released: false };
  asked.push(lock);
  return Promise.resolve({
    release: async () => {
      lock.released = true;
    },
  });
};

afterEach(() => {
  asked.length = 0;
  Reflect.deleteProperty(navigator, 'wakeLock');
});

const onTheLadder = async () => {
  const desk = await freshDesk();
  const { sculpture } = await done(addSculpture(desk, { number: '1', title: 'Bather' }));
  location.hash = `#/sculpture/${idPart(sculpture)}/look`;
  return render(<Shell desk={desk} />);
};

describe('On the ladder the screen', () => {
  it('is kept from going dark, asked for again when the page comes back, and let go on leaving', async () => {
    give(granted);
    await onTheLadder();
    await waitFor(() => expect(asked).toHaveLength(1));
    document.dispatchEvent(new Event('visibilitychange'));
    await waitFor(() => expect(asked).toHaveLength(2));
    location.hash = '#/settings';
    await waitFor(() => expect(asked[1]?.released).toBe(true));
    document.dispatchEvent(new Event('visibilitychange'));
    expect(asked).toHaveLength(2);
  });

  it('is not asked for at the desk', async () => {
    give(granted);
    const desk = await freshDesk();
    location.hash = '#/settings';
    render(<Shell desk={desk} />);
    await screen.findByRole('heading', { level: 1 });
    expect(asked).toHaveLength(0);
  });

  it('goes dark where the browser refuses, and nothing is said', async () => {
    give(() => Promise.reject(new DOMException('low battery', 'NotAllowedError')));
    await onTheLadder();
    expect(await screen.findByRole('heading', { level: 1 })).toBeDefined();
    expect(screen.queryByRole('alert')).toBeNull();
  });
});
