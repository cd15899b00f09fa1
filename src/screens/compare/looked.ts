import type { PhotoOfWork } from '../../actions';
import type { PhotoFit, Size } from '../../engine/photo';

/** One of the two photos, as the ways of looking show it. */
export interface Looked {
  readonly row: PhotoOfWork;
  readonly name: string;
  readonly alt: string;
  readonly size: Size;
  readonly url: string | null | undefined;
}

/** Two photos of known size, and how the earlier lies on the later where it does. */
export interface BothLooked {
  readonly earlier: Looked;
  readonly later: Looked;
  readonly fit: PhotoFit | undefined;
}
