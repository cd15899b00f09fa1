import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { carriedOut, type Desk, deskOn } from '../../../src/actions';
import { deviceBox } from '../../../src/device/box';
import { SculptureListScreen } from '../../../src/screens/sculptures/SculptureListScreen';
import { axeFaults } from '../axe';
import { aRound, aWork, freshDesk, show } from '../deskwork';

const persist = vi.fn(async () => true);
let promised = false;

beforeEach(() => {
  promised = false;
  persist.mockReset().mockImplementation(async () => {
    promised = true;
    return true;
  });
  const storage = { persisted: async () => promised, persist };
  Object.defineProperty(navigator, 'storage', { value: storage, configurable: true });
});
afterEach(() => {
  Reflect.deleteProperty(navigator, 'storage');
  vi.restoreAllMocks();
  deviceBox.forget('patina-round.asked to keep');
});

const heron = (desk: Desk) => aWork(desk, { title: 'Grey heron', number: '2', areas: [2] });
const title = 'Shall the browser keep what you entered?';

describe('The first screen', () => {
  it('asks the browser to keep the data after the first real save, by a tap, and not again', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    await heron(desk);
    const shown = show(desk, <SculptureListScreen />);
    expect(await screen.findByText(title)).toBeDefined();
    expect(persist).not.toHaveBeenCalled();
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Ask the browser to keep it' }));
    expect(persist).toHaveBeenCalledTimes(1);
    await waitFor(() => expect(screen.queryByText(title)).toBeNull());
    shown.unmount();
    promised = false;
    show(desk, <SculptureListScreen />);
    await screen.findByText('Grey heron');
    expect(screen.queryByText(title)).toBeNull();
  });

  it('does not ask where the browser has promised it, nor again after "not now"', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    await heron(desk);
    promised = true;
    const first = show(desk, <SculptureListScreen />);
    await screen.findByText('Grey heron');
    expect(screen.queryByText(title)).toBeNull();
    first.unmount();

    const other = await freshDesk(2);
    await heron(other);
    promised = false;
    show(other, <SculptureListScreen />);
    await user.click(await screen.findByRole('button', { name: 'Not now' }));
    await waitFor(() => expect(screen.queryByText(title)).toBeNull());
    expect(persist).not.toHaveBeenCalled();
  });

  it('says how many rounds lie on this device only, as a caution from three on, and nothing once they were carried out', async () => {
    promised = true;
    const desk = await freshDesk();
    const work = await heron(desk);
    await aRound(desk, work, '2026-10-01', ['nothing']);
    const first = show(desk, <SculptureListScreen />);
    const one = await screen.findByRole('note', { name: /1 round is on this device only/ });
    expect(one.className).toContain('note');
    first.unmount();
    for (const day of ['2026-10-02', '2026-10-03']) await aRound(desk, work, day, ['nothing']);
    show(desk, <SculptureListScreen />);
    const three = await screen.findByRole('note', { name: /3 rounds are on this device only/ });
    expect(three.className).toContain('caution');
    await carriedOut(desk, { what: 'bag', name: 'a.survey.zip', entries: 9, photos: 0 });
    await waitFor(() => expect(screen.queryByText(/on this device only/)).toBeNull());
    deviceBox.forget(`${desk.store.name}.carried`);
  });

  it('says where entries that were stored are not found, and what to do', async () => {
    promised = true;
    const desk = await freshDesk();
    await heron(desk);
    const note = { code: 'entries missing', params: { count: 2, expected: 40 } };
    const store = Object.create(desk.store, { notes: { get: () => [note] } }) as typeof desk.store;
    show(deskOn(store, { newId: desk.newId }), <SculptureListScreen />);
    expect(await screen.findByText(/40 entries were stored and 2 are found\. Carry the survey out now/)).toBeDefined();
  });

  it('looks everything through by itself once it was left alone, and says where something was found', async () => {
    promised = true;
    const desk = await freshDesk();
    await heron(desk);
    let later: (() => void) | undefined;
    const real = setTimeout;
    vi.spyOn(globalThis, 'setTimeout').mockImplementation(((go: () => void, ms?: number) => {
      if (ms !== 10_000) return real(go, ms);
      later = go;
      return 0;
    }) as typeof setTimeout);
    const first = show(desk, <SculptureListScreen />);
    await screen.findByText('Grey heron');
    expect(await desk.store.meta('looked through')).toBeUndefined();
    await waitFor(() => expect(later).toBeDefined());
    later?.();
    await waitFor(async () =>
      expect(await desk.store.meta('looked through')).toMatchObject({ entries: 2, faults: [] }),
    );
    expect(screen.queryByText('Looking through this device found something')).toBeNull();
    first.unmount();
    const found = (await desk.store.meta<object>('looked through')) as object;
    await desk.store.setMeta('looked through', { ...found, altered: ['a'.repeat(64)] });
    const again = await freshDesk(3);
    await heron(again);
    await again.store.setMeta('looked through', { ...found, altered: ['a'.repeat(64)] });
    show(again, <SculptureListScreen />);
    expect(await screen.findByText('Looking through this device found something')).toBeDefined();
    expect(screen.getByRole('link', { name: 'See it' }).getAttribute('href')).toBe('/keeping');
  });
});
