import {
  addElevation,
  addSentinel,
  addStations,
  type Desk,
  keepMeasure,
  keepTouches,
  photoForStation,
  setElevationScale,
  setElevationStation,
  setOutline,
  setRunOff,
} from '../actions';
import { dotsIn, type Outline, type Point, type Size } from '../engine/photo';
import { type Camera, sameSpot } from './drawing/camera';
import { zoneLines } from './drawing/outlineOf';
import { outlines } from './drawing/outlines';
import { type Cover, isGreen, type Picture, paintView } from './drawing/paint';
import { paintSquare } from './drawing/square';
import { type DemoWork, garden } from './garden';
import type { DemoPhotos } from './garden/photos';
import { layPhoto, seenAt } from './layPhotos';
import { maskGreen } from './maskGreen';
import { done } from './walkRound';

/** Keeps a picture under a file name and gives its bytes. */
export type Drawing = (file: string, picture: Picture, light: number) => Promise<Blob>;

export interface Photographed {
  readonly plan: DemoPhotos;
  /** Photos of the first view so far, by year, with what they show. */
  readonly views: Map<number, { readonly photo: string; readonly picture: Picture }>;
  /** By letter; the first is the one the elevation is taken from. */
  readonly station: string;
  readonly squares: readonly { readonly thing: string; readonly green: readonly number[]; readonly which: string }[];
}

interface Place {
  readonly sculpture: string;
  readonly zones: ReadonlyMap<string, string>;
}

/** Stations, sentinel squares and run-off, before anything is photographed. */
export const setUpPhotos = async (
  desk: Desk,
  { sculpture, zones, plan }: Place & { readonly plan: DemoPhotos | undefined },
): Promise<Photographed> => {
  if (!plan) throw new Error(`It is not written how ${sculpture} is photographed.`);
  const { stations } = await done(
    addStations(
      desk,
      sculpture,
      plan.stations.map((station) => ({ ...station, lens: 35, format: 'portrait', light: 'overcast', wet: 'dry' })),
    ),
  );
  const squares = [];
  for (const { zone, which, find, green } of plan.sentinels ?? []) {
    const { sentinel } = await done(addSentinel(desk, sculpture, { zone: zones.get(zone) ?? '', which, find }));
    squares.push({ thing: sentinel, green, which });
  }
  for (const [i, letter] of plan.runOff.slice(1).entries()) {
    await done(setRunOff(desk, zones.get(plan.runOff[i] ?? '') ?? '', zones.get(letter) ?? ''));
  }
  return { plan, views: new Map(), station: stations[0]?.station ?? '', squares };
};

interface Year extends Place {
  readonly work: DemoWork;
  readonly photographed: Photographed;
  /** Counted from 2021. */
  readonly year: number;
  readonly day: string;
  readonly round: string;
}

/** What is photographed at the end of a yearly round: the first view where it is kept, and the squares, dots counted on them. */
export const photographRound = async (desk: Desk, at: Year, drawing: Drawing): Promise<void> => {
  const { photographed, year, sculpture } = at;
  const camera = photographed.plan.years[year];
  if (camera) await photographView(desk, at, camera, drawing);
  for (const { thing, green, which } of photographed.squares) {
    const picture = paintSquare((green[year] ?? 0) / 100, seedOfWork(at.work) + which.length);
    const file = `${at.work.number}-${which}-${2021 + year}.webp`;
    const facts = { ...factsOf(at), taken: `${at.day}T10:31:00` };
    const { photo } = await done(
      photoForStation(desk, sculpture, { sentinel: thing }, await drawing(file, picture, dayLight(year)), facts),
    );
    const rim = 1 / 12;
    const inside: Outline = [
      [
        [rim, rim],
        [1 - rim, rim],
        [1 - rim, 1 - rim],
        [rim, 1 - rim],
      ],
    ];
    await countDots(desk, { photo, about: thing, kind: 'even-green-film' }, inside, picture, 49);
  }
};

/** No two days have the same light, and so no two photos the same bytes. */
const dayLight = (year: number): number => 0.95 + year / 100;

const factsOf = ({ round, year, photographed }: Year) => {
  const light = photographed.plan.years[year]?.light ?? 1;
  const sky = light < 0.9 ? ('open shade' as const) : ('overcast' as const);
  return { round, light: sky, wet: 'dry' as const, washed: 'before wash' as const };
};

/** One seed a work, so that the green grows in the same places from year to year. */
const seedOfWork = ({ number }: DemoWork): number => 100 + garden.findIndex((work) => work.number === number) * 17;

const coversOf = (work: DemoWork, year: number): Record<string, Cover> =>
  Object.fromEntries(
    work.zones.map((zone) => {
      const sum = (has: RegExp) =>
        zone.series
          .filter(({ kind }) => has.test(kind))
          .reduce((all, series) => all + (series.cover[year] ?? 0) / 100, 0);
      return [zone.letter, { green: sum(/^(even-green|green-)/), bare: sum(/^bare-/), scale: sum(/^hard-water/) }];
    }),
  );

const photographView = async (desk: Desk, at: Year, camera: Camera, drawing: Drawing): Promise<void> => {
  const { work, sculpture, zones, year, photographed } = at;
  const outline = outlines[work.number];
  if (!outline) throw new Error(`No outline is drawn for ${work.number}.`);
  // Earlier years came from a smaller tablet: what is compared need not have as many pixels.
  const picture = paintView(outline, coversOf(work, year), seedOfWork(work), {
    camera,
    width: camera === sameSpot ? 600 : 480,
  });
  const file = await drawing(`${work.number}-${2021 + year}.webp`, picture, camera.light);
  const taken = `${at.day}T10:24:00`;
  const { photo } = await done(
    photoForStation(desk, sculpture, { station: photographed.station }, file, { ...factsOf(at), taken }),
  );
  photographed.views.set(year, { photo, picture });
  if (camera !== sameSpot) return;
  const { elevation } = await done(addElevation(desk, sculpture, work.side, file));
  const { scale } = photographed.plan;
  const onPicture = ([x, y]: readonly [number, number]): [number, number] => [x / 100, y / 125];
  await done(
    setElevationScale(desk, elevation, { a: onPicture(scale.top), b: onPicture(scale.foot), metres: scale.metres }),
  );
  await done(setElevationStation(desk, elevation, photographed.station));
  for (const [letter, lines] of zoneLines(outline)) {
    await done(setOutline(desk, elevation, zones.get(letter) ?? '', lines));
  }
  for (const [before, { photo: earlier }] of photographed.views) {
    const taken = photographed.plan.years[before];
    if (taken && earlier !== photo) await layPhoto(desk, earlier, photo, taken);
  }
  const measured = measuredOnView[work.number];
  if (!measured) return;
  const lines = zoneLines(outline).get(measured.zone) ?? [];
  const about = { about: zones.get(measured.zone) ?? '', kind: measured.kind };
  if (measured.way === 'dots') return countDots(desk, { photo, ...about }, lines, picture, 100);
  for (const before of measured.years) {
    const view = photographed.views.get(before);
    const seen = photographed.plan.years[before];
    if (!view || !seen) continue;
    const part = lines.map((ring) => ring.map((at) => seenOn(seen, at)));
    await maskGreen(desk, { photo: view.photo, ...about }, part, view.picture, seen.light);
  }
};

const seenOn = (camera: Camera, [x, y]: Point): Point => {
  const [across, down] = seenAt(camera, [x * 100, y * 125]);
  return [across / 100, down / 125];
};

/** What is measured on the first view beside what the eye said. */
const measuredOnView: Readonly<
  Record<string, { zone: string; kind: string } & ({ way: 'dots' } | { way: 'photo'; years: readonly number[] })>
> = {
  'SW-01': { zone: 'D', kind: 'green-run-off-streak', way: 'dots' },
  'SW-02': { zone: 'H', kind: 'even-green-film', way: 'photo', years: [0, 4, 5] },
};

/** Every dot judged as the drawing has it. */
const countDots = async (
  desk: Desk,
  about: { readonly photo: string; readonly about: string; readonly kind: string },
  part: Outline,
  picture: Picture,
  count: number,
): Promise<void> => {
  const of = { ...about, way: 'dots' as const };
  const size: Size = { width: picture.width, height: picture.height };
  const seed = 41 + count;
  const answers = dotsIn(part, size, count, seed).dots.map(([x, y]) => {
    const pixel = Math.floor(y * size.height) * size.width + Math.floor(x * size.width);
    return isGreen(picture.pixels[pixel] ?? 0) ? 'y' : 'n';
  });
  await done(keepTouches(desk, of, { part, working: { seed, dots: count, answers: answers.join('') }, corners: [] }));
  await done(keepMeasure(desk, of));
};
