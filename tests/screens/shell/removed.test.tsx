import { render, screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { addSculpture, type CarriedRow, carriedOut, type Desk, deskOn, type Opening } from '../../../src/actions';
import { deviceBox } from '../../../src/device/box';
import { WelcomeScreen } from '../../../src/screens/sculptures/WelcomeScreen';
import { App } from '../../../src/screens/shell/App';
import { Shell } from '../../../src/screens/shell/Shell';
import { axeFaults } from '../axe';
import { done, freshDesk, show } from '../deskwork';

const bag = {
  what: 'bag',
  name: 'patina-round-2026-10-12.survey.zip',
  at: '2026-10-12T17:00:00.000+01:00',
  device: 'd',
  made: 1180,
  entries: 1180,
  photos: 212,
} as const;

const removed = (fresh: Desk, lastFiles: readonly CarriedRow[]): Opening => ({
  state: 'removed',
  reason: { code: 'data removed', params: { count: 1240 } },
  lastFiles,
  startAfresh: async () => ({ state: 'open', desk: fresh }),
});

beforeEach(() => {
  location.hash = '#/';
  vi.stubGlobal('matchMedia', () => ({ matches: false }));
});
afterEach(() => vi.unstubAllGlobals());

describe('Where the browser removed the data', () => {
  it('says how much was here, names the last bag with its day, and what is in none, in the place of an empty list', async () => {
    render(<App opening={Promise.resolve(removed(await freshDesk(), [bag]))} />);
    expect(await screen.findByRole('heading', { name: 'The survey was removed from this device' })).toBeDefined();
    expect(screen.getByText(/1,240 entries were here/)).toBeDefined();
    expect(screen.getByText(bag.name)).toBeDefined();
    expect(screen.getByText('a bag, 12 October 2026: 1,180 entries, 212 photos')).toBeDefined();
    expect(screen.getByText(/Up to 60 entries were made after it/)).toBeDefined();
    expect(screen.queryByText('Start your own')).toBeNull();
    expect(await axeFaults()).toEqual([]);
  });

  it('names the folder it kept in step with, and how that brings everything back', async () => {
    const step = { ...bag, what: 'step', name: 'shared', entries: 1230 } as const;
    render(<App opening={Promise.resolve(removed(await freshDesk(), [step, bag]))} />);
    expect(await screen.findByText(/kept in step with this folder until 12 October 2026: 1,230 entries/)).toBeDefined();
    expect(screen.getByText(/Up to 10 entries were made after it/)).toBeDefined();
  });

  it('goes from there straight to where the last file is opened', async () => {
    const user = userEvent.setup();
    render(<App opening={Promise.resolve(removed(await freshDesk(), [bag]))} />);
    await user.click(await screen.findByRole('button', { name: 'Open the last file' }));
    expect(await screen.findByRole('heading', { level: 1, name: 'Carry' })).toBeDefined();
    expect(location.hash).toBe('#/carry');
  });

  it('says so where nothing was ever carried out', async () => {
    render(<App opening={Promise.resolve(removed(await freshDesk(), []))} />);
    expect(await screen.findByText(/No file with everything was carried out/)).toBeDefined();
    expect(screen.queryByText(/made after it/)).toBeNull();
  });

  it('begun with nothing, the first screen still names the file that was carried out', async () => {
    const desk = await freshDesk();
    deviceBox.write(`${desk.store.name}.carried`, [bag]);
    show(desk, <WelcomeScreen />);
    expect(await screen.findByText('There was a survey on this device')).toBeDefined();
    expect(screen.getByText(bag.name)).toBeDefined();
    deviceBox.forget(`${desk.store.name}.carried`);
  });

  it('while the app is open, it is said on the screen that is there, with the last file and no taking over', async () => {
    const written = await freshDesk();
    await done(addSculpture(written, { number: '1', title: 'Bather' }));
    await carriedOut(written, { what: 'bag', name: bag.name, entries: 2, photos: 0 });
    const { store } = written;
    const gone = Object.create(store, {
      mode: { get: () => 'reading' },
      why: { get: () => ({ code: 'data removed', params: { count: 2 } }) },
      canTakeOver: { value: false },
    }) as typeof store;
    location.hash = '#/settings';
    render(<Shell desk={deskOn(gone, {})} />);
    expect(await screen.findByText('The survey was removed from this device')).toBeDefined();
    expect(screen.getByText(bag.name)).toBeDefined();
    expect(screen.getByRole('button', { name: 'Load again' })).toBeDefined();
    expect(screen.queryByRole('button', { name: 'Take over here' })).toBeNull();
    deviceBox.forget(`${store.name}.carried`);
  });
});

describe('On an iPad in a browser tab', () => {
  const tap = { userAgent: 'Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7)', maxTouchPoints: 5 };

  it('the app is to be installed before the first entry, and going on in the browser takes a word of its own', async () => {
    const user = userEvent.setup();
    vi.stubGlobal('navigator', Object.create(navigator, Object.getOwnPropertyDescriptors(tap)));
    show(await freshDesk(), <WelcomeScreen />);
    await user.click(await screen.findByRole('button', { name: 'Start your own' }));
    expect(await screen.findByRole('heading', { name: 'Install it first' })).toBeDefined();
    expect(screen.queryByRole('heading', { name: 'Start your own collection' })).toBeNull();
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Go on in the browser all the same' }));
    expect(await screen.findByRole('heading', { name: 'Start your own collection' })).toBeDefined();
  });

  it('installed, nothing stands before the first entry', async () => {
    const user = userEvent.setup();
    vi.stubGlobal('navigator', Object.create(navigator, Object.getOwnPropertyDescriptors(tap)));
    vi.stubGlobal('matchMedia', () => ({ matches: true }));
    show(await freshDesk(), <WelcomeScreen />);
    await user.click(await screen.findByRole('button', { name: 'Start your own' }));
    await waitFor(() => expect(screen.getByRole('heading', { name: 'Start your own collection' })).toBeDefined());
  });
});
