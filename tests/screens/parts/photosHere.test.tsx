import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { afterEach, expect, it, vi } from 'vitest';
import { photoExpected } from '../../../src/actions';
import { Field, PhotosHere } from '../../../src/screens/parts';
import { useDesk } from '../../../src/screens/shell';
import { jpeg, tiff } from '../../device/photo/camera';
import { axeFaults } from '../axe';
import { aWork, freshDesk, show } from '../deskwork';
import { cameraFile, withoutBytes } from '../photos/cameraFile';

afterEach(() => vi.restoreAllMocks());

const file = (at: string) => cameraFile(jpeg({ exif: tiff(true, { taken: at }), xmp: 'x' }), 'x.jpg');

interface FormProps {
  readonly sculpture: string;
  readonly zone: string;
  readonly heard: (photos: readonly string[]) => void;
}

function Form({ sculpture, zone, heard }: FormProps) {
  const [photos, setPhotos] = useState<readonly string[]>([]);
  const desk = useDesk();
  const change = (list: readonly string[]) => {
    setPhotos(list);
    heard(list);
  };
  return (
    <PhotosHere
      desk={desk}
      sculpture={sculpture}
      zone={zone}
      as="zone"
      label="Lens L2, after"
      photos={photos}
      onChange={change}
      most={2}
    />
  );
}

it('a photo taken in a form is in the store with its work and zone before the form has it, and stays when it is taken off the list', async () => {
  const user = userEvent.setup();
  const desk = withoutBytes(await freshDesk());
  const { sculpture, zones } = await aWork(desk, { title: 'Test figure', number: 'T-1', areas: [1] });
  const zone = zones[0] as string;
  let last: readonly string[] = [];
  show(desk, <Form sculpture={sculpture} zone={zone} heard={(photos) => (last = photos)} />);
  const chosen = 'Choose a photo: Lens L2, after';
  await user.upload(screen.getByLabelText(chosen, { selector: 'input' }), file('2026:10:14 09:00:00'));
  await waitFor(() => expect(last.length).toBe(1));
  const kept = await desk.store.current(last[0] as string);
  expect(kept?.lead.body).toMatchObject({ sculpture, zone, role: 'zone' });
  expect(await photoExpected(desk)).toBeUndefined();
  expect(await axeFaults()).toEqual([]);
  await user.upload(screen.getByLabelText(chosen, { selector: 'input' }), file('2026:10:14 09:05:00'));
  await waitFor(() => expect(last.length).toBe(2));
  expect(screen.queryByLabelText(chosen, { selector: 'input' })).toBeNull();
  await user.click(screen.getByRole('button', { name: 'Take photo 1 off: Lens L2, after' }));
  expect(last.length).toBe(1);
  expect((await desk.store.current(kept?.thing as string))?.gone).toBe(false);
});

it('the same photo chosen twice stands once', async () => {
  const user = userEvent.setup();
  const desk = withoutBytes(await freshDesk());
  const { sculpture, zones } = await aWork(desk, { title: 'Test figure', number: 'T-1', areas: [1] });
  const heard = vi.fn();
  show(desk, <Form sculpture={sculpture} zone={zones[0] as string} heard={heard} />);
  const input = () => screen.findByLabelText('Choose a photo: Lens L2, after', { selector: 'input' });
  await user.upload(await input(), file('2026:10:14 09:00:00'));
  await waitFor(() => expect(heard).toHaveBeenCalledTimes(1));
  await user.upload(await input(), file('2026:10:14 09:00:00'));
  await waitFor(async () => expect(await input()).toBeDefined());
  expect(heard).toHaveBeenCalledTimes(1);
});

it('what is not a photo is refused with a sentence and the form goes on', async () => {
  const user = userEvent.setup();
  const desk = withoutBytes(await freshDesk());
  const { sculpture, zones } = await aWork(desk, { title: 'Test figure', number: 'T-1', areas: [1] });
  const heard = vi.fn();
  show(desk, <Form sculpture={sculpture} zone={zones[0] as string} heard={heard} />);
  const bad = cameraFile(new TextEncoder().encode('not a picture'), 'x.jpg');
  await user.upload(screen.getByLabelText('Choose a photo: Lens L2, after', { selector: 'input' }), bad);
  expect((await screen.findByRole('alert')).textContent).toMatch(/photo|picture/i);
  expect(heard).not.toHaveBeenCalled();
});

/** A form that holds all its fields in one state, as most do. */
function Noted({ sculpture }: { readonly sculpture: string }) {
  const [text, setText] = useState({ note: '', photos: [] as readonly string[] });
  return (
    <>
      <Field label="Note" value={text.note} onChange={(note) => setText({ ...text, note })} />
      <PhotosHere
        desk={useDesk()}
        sculpture={sculpture}
        as="other"
        label="Rim"
        photos={text.photos}
        onChange={(photos) => setText({ ...text, photos })}
      />
    </>
  );
}

it('what is typed while a photo is being kept is not lost when it arrives', async () => {
  const user = userEvent.setup();
  const desk = withoutBytes(await freshDesk());
  const { sculpture } = await aWork(desk, { title: 'Test figure', number: 'T-1', areas: [1] });
  let arrive = () => {};
  vi.spyOn(desk.store, 'keepPhoto').mockImplementation(() => new Promise<void>((done) => (arrive = done)));
  show(desk, <Noted sculpture={sculpture} />);
  await user.upload(screen.getByLabelText('Choose a photo: Rim', { selector: 'input' }), file('2026:10:14 09:00:00'));
  const note = screen.getByRole<HTMLInputElement>('textbox', { name: 'Note' });
  await user.type(note, 'one chip');
  arrive();
  await screen.findByRole('button', { name: 'Take photo 1 off: Rim' });
  expect(note.value).toBe('one chip');
});
