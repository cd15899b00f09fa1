import { nameOf } from '../engine/record';
import { commitChanges } from './commitChanges';
import type { Desk, Outcome } from './desk';
import { keptPhoto } from './keepPhoto';
import { attempt, must, refuse } from './outcome';
import { deedName, refusal } from './reasonCodes';
import { theThing, thingsWithin } from './theThing';

/** A photo or drawing of one side. Photo and elevation are one deed. */
export const addElevation = (
  desk: Desk,
  sculpture: string,
  side: string,
  file: Blob,
): Promise<Outcome<{ readonly elevation: string; readonly photo: string }>> =>
  attempt(async () => {
    const named = side.trim() || refuse(refusal('side missing', {}));
    const kept = await keptPhoto(desk, sculpture, file, 'elevation');
    const others = await thingsWithin(desk, 'elevation', sculpture);
    const order = Math.max(0, ...others.map((e) => e.body.order)) + 1;
    const elevation = nameOf.elevation(desk.newId());
    must(
      await commitChanges(desk, deedName('deed: elevation added', { side: named }), [
        ...kept.changes,
        {
          thing: elevation,
          kind: 'elevation',
          within: sculpture,
          body: { sculpture, side: named, photo: kept.photo, order },
        },
      ]),
    );
    return { elevation, photo: kept.photo };
  });

/** Its outlines go with it; undo brings them all back. */
export const removeElevation = (desk: Desk, elevation: string): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'elevation', elevation);
    const drawn = await thingsWithin(desk, 'outline', body.sculpture);
    const outlines = drawn.filter((outline) => outline.body.elevation === elevation);
    return must(
      await commitChanges(
        desk,
        deedName('deed: elevation removed', { side: body.side }),
        [elevation, ...outlines.map(({ thing }) => thing)].map((thing) => ({ thing, gone: true as const })),
      ),
    );
  });
