import type { Desk } from '../desk';

/** What a photo is about to be taken of; all names of things. */
export interface PhotoExpected {
  readonly sculpture: string;
  readonly station?: string | undefined;
  readonly sentinel?: string | undefined;
  readonly zone?: string | undefined;
  readonly round?: string | undefined;
}

const expected = 'photo expected';

/** Notes that the camera is being opened: the browser may be ended behind it, and the photo asked for again. On this device only. */
export const expectPhoto = (desk: Desk, what: PhotoExpected): Promise<void> => desk.store.setMeta(expected, what);

/** What a deed notes by which the photo came. */
export const noneExpected = { key: expected, value: null } as const;

/** The photo came, or none is wanted. */
export const noPhotoExpected = (desk: Desk): Promise<void> => desk.store.setMeta(expected, null);

/** What a photo was expected of and has not come, after a restart too. */
export const photoExpected = async (desk: Desk): Promise<PhotoExpected | undefined> =>
  (await desk.store.meta<PhotoExpected | null>(expected)) ?? undefined;
