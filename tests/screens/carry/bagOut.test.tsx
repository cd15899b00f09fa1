import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { commitChanges, type Desk, setUpCollection } from '../../../src/actions';
import { carriedRows } from '../../../src/actions/keeping/carriedOut';
import type { BagWritten, WriteAsked } from '../../../src/device/bag';
import { nameOf } from '../../../src/engine/record';
import { CarryScreen } from '../../../src/screens/carry';
import { bagWorkerHere } from '../../files/bagWorkerHere';
import { aWork, done, freshDesk, show } from '../deskwork';

const sha256 = 'd'.repeat(64);

const withPhoto = async (): Promise<Desk> => {
  const desk = await freshDesk();
  await done(setUpCollection(desk, { name: 'Quay garden', role: 'Steward' }));
  const { sculpture } = await aWork(desk, { title: 'Grey heron', number: '2', areas: [2] });
  const body = { sculpture, sha256, mime: 'image/jpeg', bytes: 12_345, role: 'other' as const };
  const photo = { thing: nameOf.photo(sha256), kind: 'photo' as const, within: sculpture, body };
  await done(commitChanges(desk, { code: 'deed: photo kept', params: {} }, [photo]));
  return desk;
};

/** What is in a bag and that it is whole is promised in tests/actions and in the browser; here only what the screen makes of it. */
const told = (asked: WriteAsked): BagWritten => ({
  file: new File(['PK'], asked.name, { type: 'application/zip' }),
  entries: 7,
  photos: 0,
  photoBytes: 0,
  missing: 1,
  damaged: [sha256],
  holds: [{ what: 'sculpture', count: 1 }],
  keptAtHome: 0,
});

beforeEach(() => bagWorkerHere({ write: async (asked) => told(asked) }));
afterEach(() => {
  vi.unstubAllGlobals();
});

describe('Carry out, a bag', () => {
  it('says what goes with it before it is made, what it holds when it is ready, and leaves with a second tap', async () => {
    const user = userEvent.setup();
    const desk = await withPhoto();
    let sent: File | undefined;
    Object.assign(navigator, {
      canShare: () => true,
      share: async ({ files }: { files: File[] }) => {
        sent = files[0];
      },
    });
    show(desk, <CarryScreen />);
    expect(
      await screen.findByText(/^No photo goes with it.*The picture of 1 photo is not on this device/),
    ).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'Prepare the bag' }));
    expect(await screen.findByRole('heading', { name: /^The bag is ready, and was read back whole/ })).toBeDefined();
    expect(screen.getByText(/^No photo is in it\..*The picture of 1 photo/)).toBeDefined();
    expect(screen.getByText(/^1 picture on this device is damaged and was left out/)).toBeDefined();
    expect(screen.queryByRole('button', { name: 'Show as text' })).toBeNull();
    expect(await carriedRows(desk), 'it has not left yet').toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Share it' }));
    await waitFor(async () => expect(await carriedRows(desk)).toMatchObject([{ what: 'bag', entries: 7 }]));
    expect(sent?.name).toMatch(/\.survey\.zip$/);
  });

  it('a bag made of another choice cannot leave under this one', async () => {
    const user = userEvent.setup();
    show(await withPhoto(), <CarryScreen />);
    await user.click(await screen.findByRole('button', { name: 'Prepare the bag' }));
    await screen.findByRole('heading', { name: /^The bag is ready/ });
    await user.click(screen.getByRole('checkbox', { name: 'Names of people' }));
    expect(screen.queryByRole('heading', { name: /^The bag is ready/ })).toBeNull();
  });

  it('left off, nothing is offered, and it can be begun again', async () => {
    const user = userEvent.setup();
    bagWorkerHere({
      write: (_, { heard, signal }) =>
        new Promise((_, fail) => {
          heard({ stage: 'writing', done: 1, all: 4 });
          signal.addEventListener('abort', () => fail(new Error('left off')));
        }),
    });
    show(await withPhoto(), <CarryScreen />);
    await user.click(await screen.findByRole('button', { name: 'Prepare the bag' }));
    expect((await screen.findByRole('progressbar', { name: 'Writing the bag …' })).getAttribute('value')).toBe('1');
    await user.click(screen.getByRole('button', { name: 'Leave off' }));
    expect(screen.queryByRole('progressbar')).toBeNull();
    expect(screen.getByRole('button', { name: 'Prepare the bag' })).toHaveProperty('disabled', false);
  });

  it('a worker that stops is said, and the choice stands', async () => {
    const user = userEvent.setup();
    bagWorkerHere({});
    show(await withPhoto(), <CarryScreen />);
    await user.click(await screen.findByRole('button', { name: 'Prepare the bag' }));
    expect((await screen.findByRole('alert')).textContent).toMatch(/stopped\. Nothing was changed here/);
    expect(screen.getByRole('button', { name: 'Prepare the bag' })).toHaveProperty('disabled', false);
  });
});
