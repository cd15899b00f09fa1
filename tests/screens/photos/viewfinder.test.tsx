import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, it, vi } from 'vitest';
import { addStation, photoExpected } from '../../../src/actions';
import { ViewfinderScreen } from '../../../src/screens/photos';
import { jpeg } from '../../device/photo/camera';
import { axeFaults } from '../axe';
import { aWork, done, freshDesk, show } from '../deskwork';
import { cameraFile, withoutBytes } from './cameraFile';

afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
  Reflect.deleteProperty(navigator, 'mediaDevices');
});

const atTheStation = async () => {
  const desk = withoutBytes(await freshDesk());
  const { sculpture } = await aWork(desk, { title: 'Test figure', number: 'T-1', areas: [1] });
  const { station } = await done(
    addStation(desk, sculpture, { aim: 'the belt buckle', mark: 'brass stud', distance: 5 }),
  );
  return { desk, sculpture, station, user: userEvent.setup() };
};

/** A camera that gives a picture of its own, and counts how often it was let go of. */
const aCamera = () => {
  const track = { readyState: 'live', stop: vi.fn() };
  const getUserMedia = vi.fn(async () => ({ getTracks: () => [track], getVideoTracks: () => [track] }));
  Object.defineProperty(navigator, 'mediaDevices', { value: { getUserMedia }, configurable: true });
  vi.stubGlobal(
    'ImageCapture',
    class {
      takePhoto = async () => cameraFile(jpeg({ xmp: 'taken' }), 'frame.jpg');
    },
  );
  vi.spyOn(HTMLMediaElement.prototype, 'play').mockResolvedValue();
  return { track, getUserMedia };
};

it('asks for no camera before it is touched, and warns of walking backwards', async () => {
  const { getUserMedia } = aCamera();
  const { desk, sculpture, station } = await atTheStation();
  show(desk, <ViewfinderScreen sculpture={sculpture} station={station} />);
  expect(await screen.findByRole('button', { name: 'Start the camera' })).toBeDefined();
  expect(screen.getByText(/Never walk backwards/)).toBeDefined();
  expect(screen.getByText(/stand at: brass stud; 5 m from the work/i)).toBeDefined();
  expect(getUserMedia).not.toHaveBeenCalled();
  expect(await axeFaults()).toEqual([]);
});

it('keeps what it takes with its station and the light, takes it back in one touch, and lets go of the camera when left', async () => {
  const { track } = aCamera();
  const { desk, sculpture, station, user } = await atTheStation();
  const { unmount } = show(desk, <ViewfinderScreen sculpture={sculpture} station={station} />);
  await user.click(await screen.findByRole('radio', { name: 'Overcast' }));
  await user.click(screen.getByRole('button', { name: 'Start the camera' }));
  await user.click(await screen.findByRole('button', { name: 'Take' }));
  expect(await screen.findByText(/Station A: the belt buckle is kept/)).toBeDefined();
  const living = async () => (await desk.store.within(sculpture, ['photo'])).filter((c) => !c.gone);
  expect((await living())[0]?.lead.body).toMatchObject({
    ...{ station, role: 'station', light: 'overcast', mime: 'image/jpeg' },
    taken: expect.stringMatching(/^2026-10-15T10:/),
  });
  expect(await axeFaults()).toEqual([]);
  await user.click(await screen.findByRole('button', { name: /^Undo/ }));
  await waitFor(async () => expect(await living()).toEqual([]));
  expect(track.stop).not.toHaveBeenCalled();
  unmount();
  expect(track.stop).toHaveBeenCalledOnce();
});

it.each([
  ['NotAllowedError', /not to let this page use the camera/],
  ['NotFoundError', /no camera that can be used/],
  ['NotReadableError', /did not start/],
])('a camera that answers %s is a sentence and the tablet’s own camera', async (name, sentence) => {
  const getUserMedia = async () => Promise.reject(new DOMException('in use', name));
  Object.defineProperty(navigator, 'mediaDevices', { value: { getUserMedia }, configurable: true });
  const { desk, sculpture, station, user } = await atTheStation();
  show(desk, <ViewfinderScreen sculpture={sculpture} station={station} />);
  await user.click(await screen.findByRole('button', { name: 'Start the camera' }));
  expect(await screen.findByText(sentence)).toBeDefined();
  await user.click(screen.getByRole('button', { name: 'Take a photo: Station A: the belt buckle' }));
  await waitFor(async () => expect(await photoExpected(desk)).toEqual({ sculpture, station }));
});

it('a station that is not here is said, with the way back', async () => {
  const { desk, sculpture } = await atTheStation();
  show(desk, <ViewfinderScreen sculpture={sculpture} station="station/nowhere" />);
  expect(await screen.findByText('This station is not on this device')).toBeDefined();
});
