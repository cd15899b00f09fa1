import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { commitChanges, type Desk } from '../../../src/actions';
import { database } from '../../../src/device/store/database';
import { KeepingScreen } from '../../../src/screens/keeping';
import { axeFaults } from '../axe';
import { aRound, aWork, done, freshDesk, show } from '../deskwork';
import { hold } from '../hold';

const bag = vi.hoisted(() => ({ answer: undefined as unknown }));
// The reading itself is tried where there are real hashes (tests/actions/freeSpace.test.ts).
vi.mock('../../../src/actions/keeping/photosInBag', () => ({ photosInBag: async () => bag.answer }));

const [old, other] = ['a'.repeat(64), 'b'.repeat(64)];

/** A work with two photos of last year's round and one of this year's, each of 3 MB by what is said of it. */
const withPhotos = async (): Promise<Desk> => {
  const desk = await freshDesk();
  const work = await aWork(desk, { title: 'Grey heron', number: '2', areas: [1] });
  const last = await aRound(desk, work, '2025-10-01', ['nothing']);
  const now = await aRound(desk, work, '2026-10-01', ['nothing']);
  const db = database(desk.store.name);
  await db.open();
  for (const [sha256, round] of [
    [old, last],
    [other, last],
    ['c'.repeat(64), now],
  ] as const) {
    await db.photoBytes.put({ sha256, mime: 'image/jpeg', bytes: new ArrayBuffer(3) });
    const body = { sculpture: work.sculpture, sha256, mime: 'image/jpeg', bytes: 3e6, role: 'other', round };
    const change = { thing: `photo/${sha256}`, kind: 'photo', within: work.sculpture, body } as const;
    await done(commitChanges(desk, { code: 'deed: photo kept', params: {} }, [change as never]));
  }
  db.close();
  return desk;
};

const choose = async () => {
  const user = userEvent.setup();
  await user.click(await screen.findByRole('checkbox', { name: /2 Grey heron/ }));
  const file = new File(['bag'], 'patina-round-2026-10-15.survey.zip');
  return { user, open: () => user.upload(screen.getByLabelText('Open the bag that holds them'), file) };
};
const answered = (photos: readonly string[]) => {
  bag.answer = { ok: true, bag: { name: 'patina-round-2026-10-15.survey.zip', day: '2026-10-15', photos } };
};

afterEach(() => {
  bag.answer = undefined;
});

describe('Making room', () => {
  it('says what each work’s photos of earlier rounds take, and lets none go before the bag was opened', async () => {
    show(await withPhotos(), <KeepingScreen />);
    await choose();
    expect(screen.getByText('2 photos, 6 MB')).toBeDefined();
    expect(screen.getByText('Chosen: 2 photos, 6 MB.')).toBeDefined();
    expect(screen.getByText(/Keep that bag in two places/)).toBeDefined();
    expect(screen.queryByRole('button', { name: /go from this device/ })).toBeNull();
    expect(await axeFaults()).toEqual([]);
  });

  it('lets go what the bag holds, says what stays, and that the rest is free', async () => {
    const desk = await withPhotos();
    show(desk, <KeepingScreen />);
    const { open } = await choose();
    answered([old]);
    await open();
    expect(await screen.findByText('The bag holds 1 of the 2, and each is whole')).toBeDefined();
    expect(screen.getByText('1 is not in it and stays.')).toBeDefined();
    expect(await desk.store.photosHere()).toHaveLength(3);
    await hold(screen.getByRole('button', { name: 'Let 1 photo go from this device' }));
    await waitFor(async () => expect(await desk.store.photosHere()).toEqual([other, 'c'.repeat(64)]));
    expect(await desk.store.meta(`away ${old}`)).toMatchObject({ day: '2026-10-15' });
  });

  it('with a bag that is damaged, or holds none of them, nothing may go and it is said why', async () => {
    const desk = await withPhotos();
    show(desk, <KeepingScreen />);
    const { open } = await choose();
    bag.answer = { ok: false, reason: { code: 'bag: file altered', params: { path: 'data/photos/x.jpg' } } };
    await open();
    expect(await screen.findByRole('alert')).toBeDefined();
    answered(['f'.repeat(64)]);
    await open();
    expect(await screen.findByText('patina-round-2026-10-15.survey.zip holds none of them')).toBeDefined();
    expect(screen.queryByRole('button', { name: /go from this device/ })).toBeNull();
    expect(await desk.store.photosHere()).toHaveLength(3);
  });

  it('says so where no photos lie here', async () => {
    show(await freshDesk(), <KeepingScreen />);
    expect(await screen.findByText('No photos lie here that could go.')).toBeDefined();
  });
});
