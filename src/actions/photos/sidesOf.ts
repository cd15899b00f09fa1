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

interface Kept {
  readonly stamp: string;
  readonly sides: readonly Side[];
}

const kept = new WeakMap<object, Map<string, Kept>>();

/** The same reference until something of them changes: they are asked for beside each zone of a round. */
export const readSides = async (desk: Desk, sculpture: string): Promise<readonly Side[]> => {
  const [elevations, outlines] = await Promise.all([
    thingsWithin(desk, 'elevation', sculpture),
    thingsWithin(desk, 'outline', sculpture),
  ]);
  const photos = await Promise.all(elevations.map(({ body }) => asThingOfKind(desk, 'photo', body.photo)));
  const stamp = [...elevations, ...outlines, ...photos].map((thing) => thing?.lead.id).join(' ');
  const shelf = kept.get(desk.store) ?? new Map<string, Kept>();
  const known = shelf.get(sculpture);
  if (known?.stamp === stamp) return known.sides;
  const sides = elevations
    .map((elevation, i): Side => {
      const photo = photos[i];
      return { elevation, photo, size: sizeOf(photo), outlines: drawnOf(outlines, elevation) };
    })
    .sort((a, b) => byOrder(a.elevation, b.elevation));
  kept.set(desk.store, shelf.set(sculpture, { stamp, sides }));
  return sides;
};

const byOrder = (a: Thing<'elevation'>, b: Thing<'elevation'>): number =>
  a.body.order - b.body.order || (a.thing < b.thing ? -1 : 1);

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
