import type { Reason } from '../../engine/record';
import { sha256 } from '../hash';
import { deviceReason } from '../reasonCodes';
import { StoreProblem } from '../storeProblem';
import { blankPlace } from './blankPlace';
import { cameraFacts } from './exif';
import { jpegEnds } from './jpegParts';
import type { PhotoOptions, PhotoRead } from './photoRead';
import { type PictureType, pictureType } from './pictureType';
import { pngHolds } from './pngParts';
import { sizeOf, upright } from './sizeOf';
import { thumbnail } from './thumbnail';

/** More than any camera of a tablet makes; a guard against a wrong file. Megabytes. */
const limit = 60;

/**
 * Everything about a picture that needs waiting for, done before anything is stored, wherever it is run. What is damaged or
 * not shown here is kept all the same, and marked; refused is only what is no photo. Rejects with a StoreProblem.
 */
export const takenIn = async (file: Blob, { keepPlace = false, name = '' }: PhotoOptions = {}): Promise<PhotoRead> => {
  const megabytes = Math.ceil(file.size / 1e6);
  if (file.size === 0) throw new StoreProblem(deviceReason('photo empty', {}));
  if (megabytes > limit) throw new StoreProblem(deviceReason('photo too large', { megabytes, limit }));
  const bytes = await file.arrayBuffer();
  const view = new Uint8Array(bytes);
  const mime = pictureType(view) ?? refuse(view, name);
  const { orientation, ...camera } = cameraFacts(view);
  const gpsBlanked = !keepPlace && blankPlace(view);
  const hash = await sha256(bytes);
  const held = await holds(view, mime);
  const lying = held === 'size untrue' ? undefined : sizeOf(view);
  const small = held === 'size untrue' ? 'cannot' : await thumbnail(shown(bytes, mime, held), lying, orientation);
  const flaw = held !== 'whole' ? held : small === 'cannot' ? 'not shown' : undefined;
  const size = typeof small === 'object' ? small : lying && upright(lying, orientation);
  return {
    photo: { sha256: hash, mime, bytes },
    ...(typeof small === 'object' ? { thumb: { sha256: hash, mime: small.mime, bytes: small.bytes } } : {}),
    facts: {
      ...(size ? { width: size.width, height: size.height } : {}),
      ...camera,
      ...(orientation ? { orientation } : {}),
      gpsBlanked,
      ...(keepPlace ? { placeKept: true } : {}),
      ...(flaw ? { flaw } : {}),
    },
    notes: notesOf(gpsBlanked, held, small === 'cannot', mime),
  };
};

/** With an end mark set to it, a browser shows a JPEG that was cut as far as it goes; without one it shows nothing. */
const shown = (bytes: ArrayBuffer, mime: PictureType, held: Holds): Blob =>
  new Blob(held === 'cut short' && mime === 'image/jpeg' ? [bytes, new Uint8Array(endMark)] : [bytes], { type: mime });

const endMark = [0xff, 0xd9];

const refuse = (bytes: Uint8Array, name: string): never => {
  const start = new TextDecoder('latin1').decode(bytes.subarray(0, 2000)).toLowerCase();
  const drawing = start.includes('<svg') || start.includes('<!doctype svg');
  throw new StoreProblem(deviceReason(drawing ? 'drawing not taken' : 'not a picture', { name }));
};

type Holds = Awaited<ReturnType<typeof pngHolds>>;

const holds = async (bytes: Uint8Array<ArrayBuffer>, mime: PictureType): Promise<Holds> => {
  if (mime === 'image/jpeg') return jpegEnds(bytes) ? 'whole' : 'cut short';
  return mime === 'image/png' ? pngHolds(bytes) : 'whole';
};

const notesOf = (blanked: boolean, held: Holds, cannot: boolean, mime: PictureType): readonly Reason[] => {
  const flawed = () => {
    if (held === 'size untrue') return [deviceReason('picture size untrue', {})];
    if (held === 'cut short') return [deviceReason(cannot ? 'picture cut, not shown' : 'picture cut', {})];
    if (!cannot) return [];
    return [deviceReason(mime === 'image/heic' ? 'HEIC not shown' : 'picture not shown', { mime })];
  };
  return [...(blanked ? [deviceReason('location blanked', {})] : []), ...flawed()];
};
