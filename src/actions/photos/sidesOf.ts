import { contains, type Outline, outlineArea, type Point, readSelector, type Size } from '../../engine/photo';
import type { Thing } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from '../questions/question';
import { thingsWithin } from '../theThing';
import { asThingOfKind } from './asThingOfKind';

/** An outline as it lies on the picture of its side. */
export interface DrawnOutline {
  readonly thing: Thing<'outline'>;
  readonly zone: string;
  readonly outline: Outline;
}

/** A side of a work with what is drawn on its picture. */
export interface Side {
  readonly elevation: Thing<'elevation'>;
  /** Undefined where the entry of the picture is not on this device. */
  readonly photo: Thing<'photo'> | undefined;
  /** Of the upright picture, pixels; null where it is not known. */
  readonly size: Size | null;
  /** The larger first, so that a small one lies on top of a large one around it. Outlines of another picture are left out. */
  readonly outlines: readonly DrawnOutline[];
}

export const sizeOf = (photo: Thing<'photo'> | undefined): Size | null => {
  const { width, height } = photo?.body ?? {};
  return width === undefined || height === undefined ? null : { width, height };
};

const drawnOf = (outlines: readonly Thing<'outline'>[], { thing, body }: Thing<'elevation'>): DrawnOutline[] =>
  outlines
    .filter((one) => one.body.elevation === thing && one.body.target.source === body.photo)
    .flatMap((one) => {
      const outline = readSelector(one.body.target.selector.value);
      return outline && outline.length > 0 ? [{ thing: one, zone: one.body.zone, outline }] : [];
    })
    .sort((a, b) => outlineArea(b.outline) - outlineArea(a.outline) || (a.zone < b.zone ? -1 : 1));

export const readSides = async (desk: Desk, sculpture: string): Promise<readonly Side[]> => {
  const [elevations, outlines] = await Promise.all([
    thingsWithin(desk, 'elevation', sculpture),
    thingsWithin(desk, 'outline', sculpture),
  ]);
  const inOrder = elevations.sort((a, b) => a.body.order - b.body.order || (a.thing < b.thing ? -1 : 1));
  return Promise.all(
    inOrder.map(async (elevation) => {
      const photo = await asThingOfKind(desk, 'photo', elevation.body.photo);
      return { elevation, photo, size: sizeOf(photo), outlines: drawnOf(outlines, elevation) };
    }),
  );
};

/** Sides of a work in order, each with its outlines. */
export const sidesOf = (desk: Desk, sculpture: string): Question<readonly Side[]> =>
  ask(
    desk,
    `sides ${sculpture}`,
    () => desk.store.counterOf(sculpture),
    () => readSides(desk, sculpture),
  );

/** The zone a touch on the picture means: the smallest outline around the place. */
export const zoneAt = ({ outlines }: Pick<Side, 'outlines'>, at: Point): string | undefined =>
  outlines.findLast(({ outline }) => contains(outline, at))?.zone;
