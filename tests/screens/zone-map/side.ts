import { commitChanges, type Desk, setOutline } from '../../../src/actions';
import type { Outline } from '../../../src/engine/photo';
import { nameOf } from '../../../src/engine/record';
import { aWork, done, type Work } from '../deskwork';

export const square = (x: number, y: number, edge = 0.1): Outline => [
  [
    [x, y],
    [x + edge, y],
    [x + edge, y + edge],
    [x, y + edge],
  ],
];

/** A side whose photo, 300 by 400 pixels, is entered here while its bytes lie on another device. */
export const aSide = async (desk: Desk, sculpture: string) => {
  const photo = nameOf.photo('a'.repeat(64));
  const elevation = nameOf.elevation(desk.newId());
  const size = { width: 300, height: 400 };
  const body = { sculpture, sha256: 'a'.repeat(64), mime: 'image/png', bytes: 9, ...size, role: 'elevation' as const };
  await done(
    commitChanges(desk, { code: 'deed: elevation added', params: { side: 'west' } }, [
      { thing: photo, kind: 'photo', within: sculpture, body },
      { thing: elevation, kind: 'elevation', within: sculpture, body: { sculpture, side: 'west', photo, order: 1 } },
    ]),
  );
  return { elevation, photo };
};

export interface WorkWithSide extends Work {
  readonly elevation: string;
  readonly photo: string;
}

/** A heron with a side seen from the west, its first zones drawn on it in a row of squares. */
export const heronFromWest = async (desk: Desk, areas: readonly number[], drawn: number): Promise<WorkWithSide> => {
  const work = await aWork(desk, { title: 'Grey heron', number: '2', areas });
  const side = await aSide(desk, work.sculpture);
  for (const [i, zone] of work.zones.slice(0, drawn).entries())
    await done(setOutline(desk, side.elevation, zone, square(0.05 + 0.15 * i, 0.1)));
  return { ...work, elevation: side.elevation, photo: side.photo };
};
