import type { BodyOf, Reason } from '../../engine/record';

/** Bytes named by their hash. */
export interface NamedBytes {
  readonly sha256: string;
  readonly mime: string;
  readonly bytes: ArrayBuffer;
}

export interface PhotoOptions {
  /** The person chose to leave the place in the picture. */
  readonly keepPlace?: boolean;
  /** Of the file, for a sentence that refuses it. */
  readonly name?: string;
}

/** What the picture says of itself, as far as it does; `gpsBlanked` is false where no place was found, or it was left in. */
export type PhotoFactsRead = Pick<
  BodyOf<'photo'>,
  'width' | 'height' | 'taken' | 'orientation' | 'focal' | 'focal35' | 'placeKept' | 'flaw'
> & { readonly gpsBlanked: boolean };

export interface PhotoRead {
  readonly photo: NamedBytes;
  /** Under the hash of the photo it is of. */
  readonly thumb?: NamedBytes;
  readonly facts: PhotoFactsRead;
  readonly notes: readonly Reason[];
}
