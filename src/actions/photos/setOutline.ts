import { type Outline, type OutlineFault, outlineFault, writeSelector } from '../../engine/photo';
import { type BodyOf, nameOf, type Reason } from '../../engine/record';
import { commitChanges, type TouchChanges } from '../commitChanges';
import type { Desk, Outcome } from '../desk';
import { attempt, must, refuse } from '../outcome';
import { deedName, refusal } from '../reasonCodes';
import { theThing } from '../theThing';
import { asThingOfKind } from './asThingOfKind';

const why: Readonly<Record<OutlineFault, Reason>> = {
  'too few corners': refusal('outline too few corners', {}),
  'crosses itself': refusal('outline crosses itself', {}),
  'too small': refusal('outline too small', {}),
  'pieces overlap': refusal('outline pieces overlap', {}),
};

/**
 * Where a zone lies on the picture of a side, in one or more pieces. Drawn again, it is said anew and keeps how far the surface
 * is folded there. Refused where the rings are no outline.
 */
export const setOutline = (
  desk: Desk,
  elevation: string,
  zone: string,
  outline: Outline,
  notes?: TouchChanges['notes'],
): Promise<Outcome<{ readonly outline: string }>> =>
  attempt(async () => {
    const fault = outlineFault(outline);
    if (fault) return refuse(why[fault]);
    const side = (await theThing(desk, 'elevation', elevation)).body;
    const { body } = await theThing(desk, 'zone', zone);
    if (body.sculpture !== side.sculpture) return refuse(refusal('not here', { thing: zone }));
    const thing = nameOf.outline(elevation, zone);
    const before = (await asThingOfKind(desk, 'outline', thing))?.body;
    const target = {
      source: side.photo,
      selector: { type: 'SvgSelector' as const, value: writeSelector(outline) },
    };
    const said: BodyOf<'outline'> = { ...before, sculpture: side.sculpture, elevation, zone, target };
    const deed = deedName('deed: outline drawn', { letter: body.letter, side: side.side });
    must(
      await commitChanges(
        desk,
        deed,
        [{ thing, kind: 'outline', within: side.sculpture, body: said }],
        notes ? { notes } : {},
      ),
    );
    return { outline: thing };
  });

/** The zone stays; only where it lies on this picture is forgotten. */
export const removeOutline = (desk: Desk, outline: string): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'outline', outline);
    const side = (await theThing(desk, 'elevation', body.elevation)).body.side;
    const { letter } = (await theThing(desk, 'zone', body.zone)).body;
    const deed = deedName('deed: outline removed', { letter, side });
    return must(await commitChanges(desk, deed, [{ thing: outline, gone: true }]));
  });

/** How much larger the real surface is than what the outline shows flat, 1 to 3; undefined where nobody said. */
export const setObliquity = (desk: Desk, outline: string, obliquity: number | undefined): Promise<Outcome> =>
  attempt(async () => {
    if (obliquity !== undefined && !(obliquity >= 1 && obliquity <= 3)) refuse(refusal('value not valid', {}));
    const { body } = await theThing(desk, 'outline', outline);
    const { letter } = (await theThing(desk, 'zone', body.zone)).body;
    const deed = deedName('deed: folds said', { letter });
    return must(await commitChanges(desk, deed, [{ thing: outline, patch: { obliquity } }]));
  });
