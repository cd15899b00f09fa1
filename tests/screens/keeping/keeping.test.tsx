import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it } from 'vitest';
import { type Checked, carriedOut, type Desk } from '../../../src/actions';
import { deviceBox } from '../../../src/device/box';
import { database } from '../../../src/device/store/database';
import { KeepingScreen } from '../../../src/screens/keeping';
import { axeFaults } from '../axe';
import { aRound, aWork, freshDesk, show } from '../deskwork';

const boxes: string[] = [];
afterEach(() => {
  for (const key of boxes.splice(0)) deviceBox.forget(key);
});

/** What looking through came to, as it lies on the device: the hashing itself is tried where there is a real one. */
const looked = (desk: Desk, given: Partial<Checked>) =>
  desk.store.setMeta('looked through', {
    ...{ entries: 4, photos: 2, presentWrong: 0, altered: [], orphans: [], missing: 0, faults: [], day: '2026-10-15' },
    ...given,
  });

const damage = async (desk: Desk, harm: (db: ReturnType<typeof database>) => Promise<unknown>): Promise<void> => {
  const db = database(desk.store.name);
  await db.open();
  await harm(db);
  db.close();
};

describe('Keeping it safe', () => {
  it('of an empty collection says that nothing was carried out or looked through, and that it is unencrypted', async () => {
    show(await freshDesk(), <KeepingScreen />);
    expect(await screen.findByText('0 entries, 0 photos, 0 bytes.')).toBeDefined();
    expect(await screen.findByText('Nothing was carried out from this device yet.')).toBeDefined();
    expect(await screen.findByText('Not looked through yet.')).toBeDefined();
    expect(screen.getByText(/unencrypted/)).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('says how many rounds are on this device only, and lists what left it with its day', async () => {
    const desk = await freshDesk();
    const work = await aWork(desk, { title: 'Grey heron', number: '2', areas: [2] });
    await aRound(desk, work, '2026-10-01', ['nothing']);
    boxes.push(`${desk.store.name}.carried`);
    await carriedOut(desk, { what: 'bag', name: 'patina-round-2026-10-15.survey.zip', entries: 6, photos: 1 });
    await aRound(desk, work, '2026-10-14', ['nothing']);
    show(desk, <KeepingScreen />);
    expect(await screen.findByText('1 round is on this device only.')).toBeDefined();
    expect(screen.getByText(/after the last time everything left, on 15 October 2026/)).toBeDefined();
    expect(screen.getByText('patina-round-2026-10-15.survey.zip')).toBeDefined();
    expect(screen.getByText('15 October 2026 · bag, 6 entries, 1 photo')).toBeDefined();
    expect(screen.getByRole('link', { name: 'Carry it out' }).getAttribute('href')).toBe('/carry');
  });

  it('looks everything through and says that it is whole', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    await aWork(desk, { title: 'Grey heron', number: '2', areas: [2, 1] });
    show(desk, <KeepingScreen />);
    await user.click(await screen.findByRole('button', { name: 'Look everything through' }));
    expect(await screen.findByText('Looked through on 15 October 2026')).toBeDefined();
    expect(screen.getByText('3 entries and 0 photos: all whole.')).toBeDefined();
  });

  it('names damaged photos, sets them aside and says where they come back from; never that all is whole', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    await looked(desk, { altered: ['a'.repeat(64)] });
    show(desk, <KeepingScreen />);
    expect(await screen.findByText('1 photo is no longer as it was kept')).toBeDefined();
    expect(screen.queryByText(/all whole/)).toBeNull();
    expect(screen.getByRole('link', { name: 'Carry a bag in' }).getAttribute('href')).toBe('/carry');
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Set them aside' }));
    await waitFor(() => expect(screen.queryByText('1 photo is no longer as it was kept')).toBeNull());
  });

  it('where entries are missing, sends to the file and the last bag before anything is counted anew', async () => {
    const desk = await freshDesk();
    await looked(desk, { faults: [{ code: 'counts differ', params: { count: 3, expected: 4 } }] });
    show(desk, <KeepingScreen />);
    expect(await screen.findByText('Entries are missing, or are not the ones that were stored')).toBeDefined();
    expect(screen.getByText(/Then carry in your last bag/)).toBeDefined();
    expect(screen.getAllByRole('link', { name: 'Carry it out' }).length).toBe(2);
  });

  it('makes what is shown anew from the entries where it does not follow from them', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    await aWork(desk, { title: 'Grey heron', number: '2', areas: [2] });
    await damage(desk, async (db) => db.current.put({ ...(await db.current.toArray())[0]!, gone: true }));
    show(desk, <KeepingScreen />);
    await user.click(await screen.findByRole('button', { name: 'Look everything through' }));
    expect(await screen.findByText('What is shown may be wrong; what was entered is there')).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'Make it anew from the entries' }));
    expect(await screen.findByText('2 entries and 0 photos: all whole.')).toBeDefined();
  });

  it('clears away photos nothing speaks of, when asked', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const stray = 'b'.repeat(64);
    await damage(desk, (db) => db.photoBytes.put({ sha256: stray, mime: 'image/jpeg', bytes: new ArrayBuffer(3) }));
    await looked(desk, { orphans: [stray] });
    show(desk, <KeepingScreen />);
    expect(await screen.findByText('1 photo lies here that nothing speaks of')).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'Clear them away' }));
    await waitFor(async () => expect(await desk.store.photosHere()).toEqual([]));
  });
});
