import { afterEach, expect, test, vi } from 'vitest';
import { photoUrl } from '../../src/actions';
import { jpeg } from '../device/photo/camera';
import { freshDesk } from '../screens/deskwork';

afterEach(() => vi.restoreAllMocks());

/** The type of the picture a screen would be given for these bytes, whatever their row says they are. */
const typeShown = async (bytes: ArrayBuffer, mime: string): Promise<string> => {
  const desk = await freshDesk();
  const sha256 = 'a'.repeat(64);
  await desk.store.keepPhoto({ sha256, mime, bytes });
  let shown: Blob | undefined;
  vi.spyOn(URL, 'createObjectURL').mockImplementation((blob) => {
    shown = blob as Blob;
    return 'blob:shown';
  });
  const question = photoUrl(desk, `photo/${sha256}`, 'whole');
  const leave = question.subscribe(() => undefined);
  await expect.poll(() => question.get()).toBe('blob:shown');
  leave();
  desk.store.close();
  return shown!.type;
};

const bytesOf = (text: string): ArrayBuffer => new Uint8Array(new TextEncoder().encode(text)).buffer;

test.each([
  [
    'an SVG called an SVG',
    bytesOf('<svg xmlns="http://www.w3.org/2000/svg"><script>1</script></svg>'),
    'image/svg+xml',
  ],
  ['an SVG called a JPEG', bytesOf('<?xml version="1.0"?><svg/>'), 'image/jpeg'],
  ['a page called a picture', bytesOf('<!doctype html><script>1</script>'), 'image/png'],
  ['nothing at all', new ArrayBuffer(0), 'image/svg+xml'],
])('%s that came in a file is given to no screen as a picture or a page', async (_, bytes, mime) => {
  expect(await typeShown(bytes, mime)).toBe('application/octet-stream');
});

test('a photo is shown as what its bytes are, though its row calls it a drawing', async () => {
  const bytes = jpeg({});
  expect(await typeShown(new Uint8Array(bytes).buffer, 'image/svg+xml')).toBe('image/jpeg');
});
