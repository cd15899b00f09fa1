import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it, vi } from 'vitest';
import { type Change, commitChanges, type Desk, setUpCollection } from '../../../src/actions';
import { type BodyOf, nameOf } from '../../../src/engine/record';
import { CarryScreen } from '../../../src/screens/carry';
import { asFile, asZipped, bagged, hashOf, payloadOf, picture } from '../../files/bags';
import { utf8, zipOf } from '../../files/zipped';
import { aWork, done, freshDesk, show } from '../deskwork';
import { withoutBytes } from '../photos/cameraFile';

const pictures = [picture(1), picture(2)];

const photographed = async () => {
  const desk = await freshDesk();
  await done(setUpCollection(desk, { name: 'Quay garden', role: 'Steward' }));
  const { sculpture } = await aWork(desk, { title: 'Grey heron', number: '2', areas: [2] });
  for (const bytes of pictures) {
    const sha256 = hashOf(bytes);
    const body: BodyOf<'photo'> = { sculpture, sha256, mime: 'image/jpeg', bytes: bytes.length, role: 'other' };
    const change: Change = { thing: nameOf.photo(sha256), kind: 'photo', within: sculpture, body };
    await done(commitChanges(desk, { code: 'deed: photo kept', params: {} }, [change]));
  }
  return desk;
};

const bagOf = async (desk: Desk, photos: readonly Uint8Array[], litter = false): Promise<File> => {
  const files = asZipped(bagged(payloadOf(desk.collection, await desk.store.allEntries(), photos)), 'bag/');
  return asFile(zipOf([...files, ...(litter ? [{ name: '__MACOSX/._bag', bytes: utf8('x') }] : [])]));
};
const openFile = (file: File) =>
  userEvent.upload(screen.getByLabelText('Open a survey file or bag'), file, { applyAccept: false });

/** That the bytes are kept and go again is promised in tests/actions. */
const keptOn = (desk: Desk): string[] => {
  const kept: string[] = [];
  vi.spyOn(withoutBytes(desk).store, 'keepPhoto').mockImplementation(async ({ sha256 }) => void kept.push(sha256));
  return kept;
};

it('a bag shows which photos come with it and which are missing, is carried in whole, and taken back whole', async () => {
  const user = userEvent.setup();
  const file = await bagOf(await photographed(), pictures.slice(0, 1), true);
  const desk = await freshDesk(77);
  const kept = keptOn(desk);
  show(desk, <CarryScreen />);
  await screen.findByLabelText('Open a survey file or bag');
  await openFile(file);
  const row = await screen.findByRole('row', { name: /2 Grey heron/ });
  const cells = within(row).getAllByRole('cell');
  expect(cells.find((cell) => cell.dataset.head === 'Photos in it')?.textContent).toBe('1');
  expect(cells.find((cell) => cell.dataset.head === 'Photos missing')?.textContent).toBe('1');
  expect(screen.getByText(/^1 photo comes with it/)).toBeDefined();
  expect(screen.getByText(/1 file that a computer left in the bag/)).toBeDefined();
  await user.click(screen.getByRole('button', { name: 'Carry it in' }));
  expect(await screen.findByRole('note', { name: /Carried in: \d+ entries and 1 photo\./ })).toBeDefined();
  expect(kept).toEqual([hashOf(picture(1))]);
  await user.click(screen.getByRole('button', { name: 'Take back what came in' }));
  expect(await screen.findByRole('note', { name: /Everything is as before/ })).toBeDefined();
  expect(await desk.store.allEntries()).toEqual([]);
});

it('photos that come later to entries that are here find their place, with nothing to take back', async () => {
  const user = userEvent.setup();
  const desk = await photographed();
  const kept = keptOn(desk);
  show(desk, <CarryScreen />);
  await screen.findByLabelText('Open a survey file or bag');
  await openFile(await bagOf(desk, pictures));
  await user.click(await screen.findByRole('button', { name: 'Carry it in' }));
  expect(await screen.findByRole('note', { name: /Carried in: 0 entries and 2 photos\./ })).toBeDefined();
  expect(screen.queryByRole('button', { name: 'Take back what came in' })).toBeNull();
  expect(kept.sort()).toEqual(pictures.map(hashOf).sort());
});

it('a damaged bag says which file in it is damaged, and nothing is stored', async () => {
  const bytes = new Uint8Array(await (await bagOf(await photographed(), pictures)).arrayBuffer());
  const at = bytes.findIndex((_, i) => picture(2).every((byte, k) => bytes[i + k] === byte));
  bytes[at + 9] = (bytes[at + 9] ?? 0) ^ 1;
  const desk = await freshDesk(77);
  show(desk, <CarryScreen />);
  await screen.findByLabelText('Open a survey file or bag');
  await openFile(asFile(bytes));
  const note = await screen.findByRole('alert');
  expect(note.textContent).toContain(`data/photos/${hashOf(picture(2))}.jpg`);
  expect(note.textContent).toContain('Nothing was stored');
  expect(await desk.store.photosHere()).toEqual([]);
});

it('says which photos are missing here, and places those found among picture files', async () => {
  const desk = await photographed();
  const kept = keptOn(desk);
  show(desk, <CarryScreen />);
  expect(await screen.findByText(/speaks of 2 photos that are not on this device/)).toBeDefined();
  const files = [picture(1), picture(9)].map((bytes, i) => new File([bytes], `${i}.jpg`, { type: 'image/jpeg' }));
  await userEvent.upload(screen.getByLabelText('Look for them in picture files'), files);
  expect(
    await screen.findByText('1 photo has found its place. 1 file was passed over: nothing here waits for it.', {
      selector: 'p',
    }),
  ).toBeDefined();
  expect(kept).toEqual([hashOf(picture(1))]);
  expect(screen.getByText(/speaks of 1 photo that is not on this device/)).toBeDefined();
});
