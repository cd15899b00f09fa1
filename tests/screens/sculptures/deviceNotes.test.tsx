import { screen } from '@testing-library/react';
import { afterEach, describe, expect, it } from 'vitest';
import { DeviceNotes } from '../../../src/screens/sculptures/DeviceNotes';
import { freshDesk, show } from '../deskwork';

const told = { persisted: async () => false, persist: async () => false };

const storage = (value: object | undefined) => {
  Object.defineProperty(navigator, 'storage', { value, configurable: true });
  Object.defineProperty(globalThis, 'matchMedia', { value: () => ({ matches: false }), configurable: true });
};
afterEach(() => {
  Reflect.deleteProperty(navigator, 'storage');
  Reflect.deleteProperty(globalThis, 'matchMedia');
});

describe('Before the first entry', () => {
  it('a window that forgets everything is named and warned of where the browser gives it away', async () => {
    storage({ ...told, getDirectory: () => Promise.reject(new DOMException('no', 'SecurityError')) });
    show(await freshDesk(), <DeviceNotes />);
    expect(await screen.findByText('This window forgets everything')).toBeDefined();
    expect(screen.getByText(/Open the app in an ordinary window/)).toBeDefined();
  });

  it.each([
    ['answers as it does anywhere', { ...told, getDirectory: async () => ({}) }],
    ['has no such file system', told],
    ['says nothing of storage at all', undefined],
  ])('a browser that %s is not accused, and the warning stands in words', async (_, value) => {
    storage(value);
    show(await freshDesk(), <DeviceNotes />);
    expect(await screen.findByText(/Not in a private window/)).toBeDefined();
    await new Promise((go) => setTimeout(go, 30));
    expect(screen.queryByText('This window forgets everything')).toBeNull();
  });
});
