import { createHash } from 'node:crypto';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { addSculpture, type Desk, joinFolder } from '../../../src/actions';
import { type FolderHandle, folderReason, memoryFolder, pickedFolder } from '../../../src/device/folder';
import { StoreProblem } from '../../../src/device/storeProblem';
import { InStepScreen } from '../../../src/screens/in-step';
import { nodeHandle } from '../../device/folder/nodeHandle';
import { axeFaults } from '../axe';
import { aWork, done, freshDesk, show } from '../deskwork';

// The hashing of this machine takes no bytes of the page's making: the same, by another door.
beforeEach(
  () =>
    void vi.spyOn(crypto.subtle, 'digest').mockImplementation(async (_, data) => {
      const view = ArrayBuffer.isView(data) ? data : new Uint8Array(data);
      return new Uint8Array(createHash('sha256').update(new Uint8Array(view.buffer)).digest()).buffer;
    }),
);
afterEach(() => vi.unstubAllGlobals());

const shared = { way: 'picked', name: 'shared' } as const;
const inFolder = async (seed: number) => {
  const folder = memoryFolder();
  const desk = await freshDesk(seed);
  await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
  await joinFolder(desk, folder, shared);
  return { desk, folder };
};
const button = (name: string) => screen.findByRole('button', { name });
/** A touch before what enables it was kept is none. */
const ready = async (name: string) => {
  await waitFor(async () => expect((await button(name)).hasAttribute('disabled')).toBe(false));
  return button(name);
};

describe('Keep in step', () => {
  it('is off at first, says what goes into the folder, and leads to carrying by hand', async () => {
    show(await freshDesk(1), <InStepScreen />);
    expect(await screen.findByText(/names of persons and photos too, and lies there unencrypted/)).toBeDefined();
    expect(await button('Switch on')).toBeDefined();
    expect(screen.getByLabelText('Password').getAttribute('type')).toBe('password');
    expect(screen.queryByRole('button', { name: 'Choose a folder' }), 'where no folder can be picked').toBeNull();
    expect(screen.getAllByRole('link', { name: 'Carry' })[0]?.getAttribute('href')).toBe('/carry');
    expect(await axeFaults()).toEqual([]);
  });

  it('asks for what is missing before it asks the server', async () => {
    const user = userEvent.setup();
    const asked = vi.fn();
    vi.stubGlobal('fetch', asked);
    show(await freshDesk(2), <InStepScreen />);
    await user.click(await ready('Switch on'));
    expect(screen.getByText('Type the name the server knows you by.')).toBeDefined();
    expect(screen.getByText('Type the password.')).toBeDefined();
    expect(asked).not.toHaveBeenCalled();
  });

  it('a password the server refuses switches nothing on, says so, and is not kept anywhere', async () => {
    const user = userEvent.setup();
    vi.stubGlobal('fetch', async () => new Response(null, { status: 401 }));
    const desk = await freshDesk(3);
    show(desk, <InStepScreen />);
    await user.type(await screen.findByLabelText('Name'), 'garden');
    await user.type(screen.getByLabelText('Password'), 'open-sesame');
    await user.click(await ready('Switch on'));
    expect((await screen.findByRole('alert')).textContent).toContain('did not take this name and password');
    expect(await button('Switch on')).toBeDefined();
    expect(JSON.stringify([await desk.store.metas(''), { ...localStorage }])).not.toContain('open-sesame');
  });

  it('says what is waiting, takes it along at a tap, and says when it was last in step', async () => {
    const user = userEvent.setup();
    const { desk, folder } = await inFolder(4);
    const other = await freshDesk(5);
    await joinFolder(other, folder, shared);
    await done(addSculpture(desk, { number: '2', title: 'Deer' }));
    show(desk, <InStepScreen />);
    expect(await screen.findByText('Waiting here: 1 entry and 0 photos.')).toBeDefined();
    await user.click(await ready('Keep in step now'));
    expect(await screen.findByText('Nothing is waiting here.')).toBeDefined();
    expect(screen.getByText(/^Last in step on 15 October 2026, 10:/)).toBeDefined();
    expect(screen.getByText('Written: 1 entry, 0 photos.')).toBeDefined();
    expect(screen.getByText(/^This tablet/)).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('says why a step did not come to its end, and keeps what waits', async () => {
    const user = userEvent.setup();
    const { desk, folder } = await inFolder(6);
    await done(addSculpture(desk, { number: '2', title: 'Deer' }));
    folder.put = () => Promise.reject(new StoreProblem(folderReason('folder: full', {})));
    show(desk, <InStepScreen />);
    await user.click(await ready('Keep in step now'));
    expect((await screen.findByRole('alert')).textContent).toContain('The server has no room left');
    expect(screen.getByText('Waiting here: 1 entry and 0 photos.')).toBeDefined();
  });

  it('names a file that was passed over, and what is wrong with it', async () => {
    const { desk, folder } = await inFolder(7);
    await folder.put('someone/1.json', new TextEncoder().encode('{"half') as Uint8Array<ArrayBuffer>);
    const user = userEvent.setup();
    show(desk, <InStepScreen />);
    await user.click(await ready('Keep in step now'));
    expect(await screen.findByText(/“someone\/1.json” in the folder is half written or was altered/)).toBeDefined();
    expect(screen.getByText(/The file ends too early|cut off|not complete/i)).toBeDefined();
  });

  it('asks again for a picked folder once the app was closed, and goes on at the tap', async () => {
    const user = userEvent.setup();
    const desk = await closedSince(8, { way: 'picked', name: 'stick' });
    let asked = 0;
    const handle: Partial<FolderHandle> = {
      kind: 'directory',
      name: 'stick',
      queryPermission: async () => 'prompt',
      requestPermission: async () => {
        asked++;
        return 'denied';
      },
    };
    const { meta } = desk.store;
    // Only a browser can keep such a handle; here it is handed in.
    desk.store.meta = async <T,>(key: string) => (key === 'in step folder' ? (handle as T) : meta<T>(key));
    show(desk, <InStepScreen />);
    await user.click(await ready('Let the app in again'));
    expect((await screen.findByRole('alert')).textContent).toContain('“stick”');
    expect(asked).toBe(1);
    expect(screen.queryByRole('button', { name: 'Keep in step now' })).toBeNull();
  });

  it('asks for the password again once the app was closed, and for no more than that', async () => {
    show(await closedSince(9, { way: 'server', name: 'garden.example', account: 'garden' }), <InStepScreen />);
    expect(await button('Go on')).toBeDefined();
    expect((screen.getByLabelText('Name') as HTMLInputElement).value).toBe('garden');
    expect((screen.getByLabelText('Password') as HTMLInputElement).value).toBe('');
  });

  it('a folder of another collection: nothing is switched on, and the reason stays to be read', async () => {
    const user = userEvent.setup();
    const path = await mkdtemp(join(tmpdir(), 'in-step-'));
    vi.stubGlobal('showDirectoryPicker', async () => nodeHandle(path));
    const [mine, theirs] = [await freshDesk(20), await freshDesk(21)];
    for (const desk of [mine, theirs]) await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    await joinFolder(theirs, pickedFolder(nodeHandle(path)), shared);
    const { setMeta } = mine.store;
    // Only a browser can keep such a handle.
    mine.store.setMeta = async (key, value) => (key === 'in step folder' ? undefined : setMeta(key, value));
    show(mine, <InStepScreen />);
    await user.click(await ready('Choose a folder'));
    expect((await screen.findByRole('alert')).textContent).toContain('The folder holds another collection');
    expect(await button('Choose a folder')).toBeDefined();
    await rm(path, { recursive: true });
  });

  it('switched off, it is as it was before, and the folder is left as it is', async () => {
    const user = userEvent.setup();
    const { desk, folder } = await inFolder(10);
    const before = await folder.list('');
    show(desk, <InStepScreen />);
    await user.click(await ready('Switch off'));
    expect(await button('Switch on')).toBeDefined();
    expect(await folder.list('')).toEqual(before);
  });

  it('is not offered for the invented collection', async () => {
    show({ ...(await freshDesk(11)), invented: true }, <InStepScreen />);
    expect(await screen.findByText('The invented collection is kept in step with nothing')).toBeDefined();
    expect(screen.queryByRole('button', { name: 'Switch on' })).toBeNull();
  });
});

/** A tablet that has been in step, and whose app was opened anew since. */
const closedSince = async (seed: number, how: object): Promise<Desk> => {
  const desk = await freshDesk(seed);
  const at = '2026-10-14T10:00:00.000+00:00';
  await desk.store.setMeta('in step', { ...how, writer: 'w', device: desk.store.device, since: at, who: [] });
  return desk;
};
