import type { Reason } from '../../engine/record';
import { sha256 } from '../hash';
import { deviceReason } from '../reasonCodes';
import { StoreProblem } from '../storeProblem';
import { blankPlace, takenAt } from './exif';
import { sizeOf } from './jpegParts';
import { pictureType } from './pictureType';
import { type Thumbnail, thumbnail } from './thumbnail';

/** Bytes named by their hash. */
export interface NamedBytes {
  readonly sha256: string;
  readonly mime: string;
  readonly bytes: ArrayBuffer;
}

export interface PhotoRead {
  readonly photo: NamedBytes;
  /** Under the hash of the photo it is of. */
  readonly thumb?: NamedBytes;
  /** As far as the picture says. */
  readonly facts: {
    readonly width?: number;
    readonly height?: number;
    readonly taken?: string;
    /** True where the place was blanked out before hashing; false where the picture held none that was found. */
    readonly gpsBlanked: boolean;
  };
  readonly notes: readonly Reason[];
}

/** More than any camera of a tablet makes; a guard against a wrong file. Megabytes. */
const limit = 60;

/** Everything about a picture that needs waiting for, done before anything is stored. Rejects with a StoreProblem. */
export const readPhoto = async (file: Blob & { readonly name?: string }): Promise<PhotoRead> => {
  const megabytes = Math.ceil(file.size / 1e6);
  if (file.size === 0) throw new StoreProblem(deviceReason('photo empty', {}));
  if (megabytes > limit) throw new StoreProblem(deviceReason('photo too large', { megabytes, limit }));
  const bytes = await file.arrayBuffer();
  const view = new Uint8Array(bytes);
  const mime = pictureType(view);
  if (!mime) throw new StoreProblem(deviceReason('not a picture', { name: file.name ?? '' }));
  const taken = takenAt(view);
  const gpsBlanked = blankPlace(view);
  const hash = await sha256(bytes);
  const small = await thumbnail(new Blob([bytes], { type: mime }));
  const size = typeof small === 'object' ? { width: small.width, height: small.height } : sizeOf(view);
  return {
    photo: { sha256: hash, mime, bytes },
    ...thumbOf(small, hash),
    facts: { ...size, ...(taken ? { taken } : {}), gpsBlanked },
    notes: [
      ...(gpsBlanked ? [deviceReason('location blanked', {})] : []),
      ...(small === 'cannot' ? [deviceReason('picture not shown', { mime })] : []),
    ],
  };
};

const thumbOf = (small: Thumbnail | 'cannot' | undefined, hash: string): { thumb?: NamedBytes } =>
  typeof small === 'object' ? { thumb: { sha256: hash, mime: small.mime, bytes: small.bytes } } : {};
