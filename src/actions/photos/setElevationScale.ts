import type { BodyOf } from '../../engine/record';
import { commitChanges, type TouchChanges } from '../commitChanges';
import type { Desk, Outcome } from '../desk';
import { attempt, must, refuse } from '../outcome';
import { deedName, refusal } from '../reasonCodes';
import { theThing } from '../theThing';
import { asThingOfKind } from './asThingOfKind';

/** Ends nearer than this share of the picture tell no scale. */
const leastApart = 0.01;

/** Two places on the picture of a side and how far apart they are on the work, metres; undefined takes the scale away. */
export const setElevationScale = (
  desk: Desk,
  elevation: string,
  scale: BodyOf<'elevation'>['scale'],
  notes?: TouchChanges['notes'],
): Promise<Outcome> =>
  attempt(async () => {
    if (scale) {
      const { a, b, metres } = scale;
      if (!(metres > 0 && metres <= 1000)) refuse(refusal('length not valid', {}));
      if (Math.hypot(a[0] - b[0], a[1] - b[1]) < leastApart) refuse(refusal('scale ends in one place', {}));
    }
    const { body } = await theThing(desk, 'elevation', elevation);
    const deed = deedName(scale ? 'deed: picture scaled' : 'deed: picture scale removed', { side: body.side });
    return must(await commitChanges(desk, deed, [{ thing: elevation, patch: { scale } }], notes ? { notes } : {}));
  });

/** From which station the picture of a side was taken: later photos from there lie under the same outlines. */
export const setElevationStation = (desk: Desk, elevation: string, station: string | undefined): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'elevation', elevation);
    const here = station === undefined ? undefined : await asThingOfKind(desk, 'station', station);
    if (station !== undefined && here?.body.sculpture !== body.sculpture)
      refuse(refusal('not here', { thing: station }));
    const deed = deedName('deed: station of a side said', { side: body.side });
    return must(await commitChanges(desk, deed, [{ thing: elevation, patch: { station } }]));
  });
