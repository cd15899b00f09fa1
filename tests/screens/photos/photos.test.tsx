import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, it, vi } from 'vitest';
import {
  addStation,
  expectPhoto,
  keepPhoto,
  photoExpected,
  photoForStation,
  setSetting,
  settings,
} from '../../../src/actions';
import type { BodyOf } from '../../../src/engine/record';
import { PhotosScreen } from '../../../src/screens/photos';
import { jpeg, tiff } from '../../device/photo/camera';
import { axeFaults } from '../axe';
import { aRound, aWork, done, freshDesk, show } from '../deskwork';
import { cameraFile, withoutBytes } from './cameraFile';

afterEach(() => {
  vi.restoreAllMocks();
  setSetting('keepPlace', false);
});

const bytesOf = (name: string, taken: string) => jpeg({ exif: tiff(true, { taken, gps: true }), xmp: name });
const photo = (name: string, taken = '2026:10:14 09:00:00'): File => cameraFile(bytesOf(name, taken), `${name}.jpg`);

const atTheWork = async () => {
  const desk = withoutBytes(await freshDesk());
  const work = await aWork(desk, { title: 'Test figure', number: 'T-1', areas: [1, 2] });
  const round = await aRound(desk, work, '2026-10-14', ['nothing', 'nothing']);
  const { station } = await done(addStation(desk, work.sculpture, { aim: 'the belt buckle' }));
  const photos = async () =>
    (await desk.store.within(work.sculpture, ['photo']))
      .filter((c) => !c.gone)
      .map((c) => c.lead.body as unknown as BodyOf<'photo'>);
  return { desk, ...work, round, station, photos, user: userEvent.setup() };
};

it('before the first photo says what to do', async () => {
  const { desk, sculpture } = await atTheWork();
  show(desk, <PhotosScreen sculpture={sculpture} />);
  expect(await screen.findByText('No photo of this work yet')).toBeDefined();
  expect(screen.getByLabelText('Choose many').hasAttribute('multiple')).toBe(true);
  expect(await axeFaults()).toEqual([]);
});

it('a work that is not here is said, not an empty list', async () => {
  const { desk } = await atTheWork();
  show(desk, <PhotosScreen sculpture="sculpture/nowhere" />);
  expect(await screen.findByRole('heading', { level: 1 })).toBeDefined();
  expect(screen.queryByLabelText('Choose many')).toBeNull();
});

it('many files come out kept, refused by name, and with the place blanked, and wait to be sorted', async () => {
  const { desk, sculpture, photos, user } = await atTheWork();
  show(desk, <PhotosScreen sculpture={sculpture} />);
  const files = [photo('one'), cameraFile(new TextEncoder().encode('<svg/>'), 'two.png', 'image/png'), photo('three')];
  await user.upload(await screen.findByLabelText('Choose many'), files);
  expect(await screen.findByText('2 photos kept.')).toBeDefined();
  expect(screen.getByText('The place was blanked out of 2 photos.')).toBeDefined();
  expect(within(screen.getByRole('alert')).getByText(/“two.png” is an SVG drawing/)).toBeDefined();
  expect(await screen.findByRole('heading', { name: 'Not sorted yet' })).toBeDefined();
  await waitFor(() =>
    expect(screen.getAllByRole('button', { name: /Not sorted yet 14 October 2026/ })).toHaveLength(2),
  );
  expect(await photos()).toHaveLength(2);
  expect(await axeFaults()).toEqual([]);
});

it('a photo is sorted by single touches, each kept, and then stands under its round', async () => {
  const { desk, sculpture, station, round, photos, user } = await atTheWork();
  await done(keepPhoto(desk, sculpture, photo('one'), 'other'));
  show(desk, <PhotosScreen sculpture={sculpture} />);
  await user.click(await screen.findByRole('button', { name: /Not sorted yet 14 October 2026/ }));
  const sheet = within(await screen.findByRole('dialog'));
  await user.selectOptions(sheet.getByLabelText('Station'), 'Station A: the belt buckle');
  await waitFor(async () => expect((await photos())[0]).toMatchObject({ station, role: 'station' }));
  await user.selectOptions(sheet.getByLabelText('Round'), 'Annual, 14 October 2026');
  await user.click(sheet.getByRole('radio', { name: 'Overcast' }));
  await waitFor(async () => expect((await photos())[0]).toMatchObject({ station, round, light: 'overcast' }));
  expect(sheet.getByText('The place was blanked before it was kept.')).toBeDefined();
  expect(await axeFaults()).toEqual([]);
  await user.click(sheet.getByRole('button', { name: 'Close' }));
  expect(await screen.findByRole('heading', { name: 'Annual, 14 October 2026' })).toBeDefined();
  expect(screen.queryByRole('heading', { name: 'Not sorted yet' })).toBeNull();
});

it('the list is narrowed to a round or a station, and says when nothing fits', async () => {
  const { desk, sculpture, station, zones, user } = await atTheWork();
  await done(photoForStation(desk, sculpture, { station }, photo('one')));
  await done(keepPhoto(desk, sculpture, photo('two', '2020:01:01 09:00:00'), 'zone', { zone: zones[0] }));
  show(desk, <PhotosScreen sculpture={sculpture} />);
  const tiles = () => screen.queryAllByRole('button', { name: /20(26|20)$/ });
  await waitFor(() => expect(tiles()).toHaveLength(2));
  await user.selectOptions(screen.getByLabelText('Round'), 'Outside any round');
  expect(tiles().map((tile) => tile.textContent?.trim())).toEqual([
    expect.stringMatching(/zone A, part A 1 January 2020$/),
  ]);
  await user.selectOptions(screen.getByLabelText('What it shows'), 'Station A: the belt buckle');
  expect(screen.getByText('No photo fits. Choose another round, or everything.')).toBeDefined();
});

it('a photo that was expected when the browser was ended is asked for, put in its place, and no longer asked for', async () => {
  const { desk, sculpture, station, photos, user } = await atTheWork();
  await expectPhoto(desk, { sculpture, station });
  show(desk, <PhotosScreen sculpture={sculpture} />);
  const notice = within(
    (await screen.findByText(/A photo was expected: Station A: the belt buckle/)).closest('section') as HTMLElement,
  );
  const entry = notice
    .getAllByLabelText('Choose a photo: Station A: the belt buckle')
    .find((el) => el.matches('input'));
  await user.upload(entry as HTMLElement, photo('one'));
  await waitFor(async () => expect((await photos())[0]).toMatchObject({ station }));
  expect(screen.queryByText(/A photo was expected/)).toBeNull();
  expect(await photoExpected(desk)).toBeUndefined();
});

it('leaving the place in is a choice that is off until it is touched', async () => {
  const { desk, sculpture, user } = await atTheWork();
  show(desk, <PhotosScreen sculpture={sculpture} />);
  const tick = await screen.findByRole('checkbox', { name: 'Leave the place in photos' });
  expect((tick as HTMLInputElement).checked).toBe(false);
  await user.click(tick);
  expect(settings.get().keepPlace).toBe(true);
});

it('a photo with something wrong bears it, and says it when opened', async () => {
  const { desk, sculpture, user } = await atTheWork();
  const cut = bytesOf('one', '2026:10:14 09:00:00').subarray(0, -2);
  await done(keepPhoto(desk, sculpture, cameraFile(cut, 'cut.jpg'), 'other'));
  show(desk, <PhotosScreen sculpture={sculpture} />);
  expect(await screen.findByText('Cut short')).toBeDefined();
  await user.click(screen.getByRole('button', { name: /Not sorted yet / }));
  expect(await screen.findByText('The file ends before the picture does. It is kept as it came.')).toBeDefined();
});
