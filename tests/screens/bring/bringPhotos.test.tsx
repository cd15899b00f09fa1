import { screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, it, vi } from 'vitest';
import { undoLast } from '../../../src/actions';
import type { BodyOf } from '../../../src/engine/record';
import { BringScreen } from '../../../src/screens/bring';
import { jpeg, tiff } from '../../device/photo/camera';
import { axeFaults } from '../axe';
import { aRound, aWork, done, freshDesk, show } from '../deskwork';
import { cameraFile, withoutBytes } from '../photos/cameraFile';

afterEach(() => vi.restoreAllMocks());

const photo = (name: string, taken?: string): File =>
  cameraFile(jpeg({ ...(taken ? { exif: tiff(true, { taken }) } : {}), xmp: name }), `${name}.jpg`);

it('keeps old photos, puts them together by day, and gives a day to a round as one deed', async () => {
  const user = userEvent.setup();
  const desk = withoutBytes(await freshDesk());
  const work = await aWork(desk, { title: 'Heron', number: '7', areas: [1] });
  const round = await aRound(desk, work, '2024-09-14', ['nothing']);
  show(desk, <BringScreen />);
  await user.click(await screen.findByRole('radio', { name: /Old photos/ }));
  const files = [
    photo('one', '2019:05:12 10:00:00'),
    photo('two', '2024:09:14 09:00:00'),
    photo('three', '2019:05:12 11:00:00'),
    photo('four'),
    cameraFile(new TextEncoder().encode('no picture'), 'broken.jpg'),
  ];
  await user.upload(screen.getByLabelText('Choose photos'), files);
  expect(await screen.findByText('4 photos are kept.')).toBeDefined();
  expect(screen.getByText(/“broken.jpg” is not a picture/)).toBeDefined();
  expect(await screen.findByText('12 May 2019 · 2 photos')).toBeDefined();
  expect(screen.getByText('Without a date in the photo · 1 photo')).toBeDefined();
  expect(screen.getByLabelText('Round of 14 September 2024'), 'proposed by its day').toHaveProperty('value', round);
  expect(await axeFaults()).toEqual([]);

  const inRound = async () =>
    (await desk.store.within(work.sculpture, ['photo']))
      .map(({ lead }) => lead.body as unknown as BodyOf<'photo'>)
      .filter((body) => body.round === round).length;
  const entry = screen.getByLabelText('Round of 12 May 2019');
  expect(entry).toHaveProperty('value', '');
  await user.selectOptions(entry, round);
  await vi.waitFor(async () => expect(await inRound()).toBe(3));
  await done(undoLast(desk));
  expect(await inRound()).toBe(1);
});
