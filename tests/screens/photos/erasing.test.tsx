import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import { addElevation } from '../../../src/actions';
import { PhotosScreen } from '../../../src/screens/photos';
import { jpeg, tiff } from '../../device/photo/camera';
import { axeFaults } from '../axe';
import { aWork, done, freshDesk, show } from '../deskwork';
import { hold } from '../hold';
import { cameraFile, withoutBytes } from './cameraFile';

const file = () => cameraFile(jpeg({ exif: tiff(true, { taken: '2026:10:14 09:00:00' }), xmp: 'x' }), 'x.jpg');

it('a photo that shows a bystander is erased after two questions, though a side rests on it, and is not taken in again', async () => {
  const user = userEvent.setup();
  const desk = withoutBytes(await freshDesk());
  const { sculpture } = await aWork(desk, { title: 'Test figure', number: 'T-1', areas: [1] });
  const { photo } = await done(addElevation(desk, sculpture, 'west', file()));
  show(desk, <PhotosScreen sculpture={sculpture} />);
  await user.click(await screen.findByRole('button', { name: /14 October 2026/ }));
  await user.click(await screen.findByRole('button', { name: 'Erase for good …' }));
  const sheet = within(await screen.findByRole('dialog', { name: 'Erase this photo' }));
  expect(sheet.getByText(/What was measured or drawn on it stays/)).toBeDefined();
  expect(sheet.getByText(/keep it until they meet this survey again/)).toBeDefined();
  expect(await axeFaults()).toEqual([]);
  await user.type(sheet.getByRole('textbox', { name: 'Reason' }), 'A passer-by');
  await user.click(sheet.getByRole('button', { name: 'Erase for good' }));
  expect(await desk.store.current(photo)).toBeDefined();
  await hold(sheet.getByRole('button', { name: 'Yes, erase it now' }));
  await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull());
  expect(await desk.store.current(photo)).toBeUndefined();
  expect(await desk.store.photosHere()).toEqual([]);
  await user.upload(await screen.findByLabelText('Choose many'), [file()]);
  expect(
    await screen.findByText(/This picture was erased from the survey on 15 October 2026 \(“A passer-by”\)/),
  ).toBeDefined();
  expect(await desk.store.photosHere()).toEqual([]);
});
