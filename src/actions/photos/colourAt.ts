import { deviceReason } from '../../device/reasonCodes';
import type { Point, Rgb } from '../../engine/photo';
import type { Desk, Outcome } from '../desk';
import { attempt, refuse } from '../outcome';
import { askPixels, keptPhotoOf } from './pixelsOf';

/**
 * The colour a photo shows at a place: the middle of a small spot, so that a speck or a grain of noise does not tell. It tells sorts of
 * surface on this photo apart; it is no colour reading.
 */
export const colourAt = (desk: Desk, photo: string, at: Point): Promise<Outcome<{ readonly colour: Rgb }>> =>
  attempt(async () => {
    const told = await askPixels(desk, { do: 'colour', photo: await keptPhotoOf(desk, photo), at });
    return told ?? refuse(deviceReason('picture not opened', {}));
  });
