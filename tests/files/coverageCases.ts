import { coverageInterval } from '../../src/engine/condition';
import { isRefused, type Measurement, type Rgb } from '../../src/engine/photo';
import { asJpeg, type Drawing, type DrawnPhoto, drawnPhoto, readJpeg } from './drawnPhotos';
import { dotsOn, maskOn, tracedOn } from './measuredPhotos';

/** Shares of green that are drawn. */
export const coverages = [0.005, 0.01, 0.03, 0.05, 0.1, 0.2, 0.35, 0.5, 0.7, 0.9] as const;

const holds = (measured: Measurement, share: number): boolean =>
  !isRefused(measured) && measured.low <= share && share <= measured.high;

const scoredHolds = (measured: Measurement, share: number): boolean => {
  if (isRefused(measured)) return false;
  const { low, high } = coverageInterval(measured.coverage);
  return low <= share && share <= high;
};

const off = (measured: Measurement, share: number): number =>
  isRefused(measured) ? Number.NaN : Math.abs(measured.value - share);

const mean = (of: readonly number[]): number => of.reduce((sum, one) => sum + one, 0) / of.length;

/** One way of measuring at one coverage, over many runs. */
export interface Row {
  readonly what: string;
  readonly share: number;
  /** Mean and largest absolute error, mean width of the 95 % interval: shares. */
  readonly error: number;
  readonly worst: number;
  readonly width: number;
  /** Share of the runs whose interval holds the truth. */
  readonly holds: number;
  /** The same of the 90 % range that is scored with. */
  readonly scoredHolds: number;
  readonly runs: number;
}

const rowOf = (what: string, share: number, all: readonly (readonly [Measurement, number])[]): Row => {
  const told = all.filter(([measured]) => !isRefused(measured));
  const errors = told.map(([measured, truth]) => off(measured, truth));
  return {
    what,
    share,
    error: mean(errors),
    worst: Math.max(...errors),
    width: mean(told.map(([measured]) => (isRefused(measured) ? 0 : measured.high - measured.low))),
    holds: told.filter(([measured, truth]) => holds(measured, truth)).length / told.length,
    scoredHolds: told.filter(([measured, truth]) => scoredHolds(measured, truth)).length / told.length,
    runs: told.length,
  };
};

/** Patches traced with corners off by half a percent of the width (standard deviation, each way), on photos held askew. */
export const tracedRows = (photosEach: number, tracingsEach: number): Row[] =>
  coverages.map((coverage, i) => {
    const all = Array.from({ length: photosEach }, (_, k) => {
      const photo = drawnPhoto({ seed: 1000 * i + k, coverage, turn: k % 6, width: 480 });
      return Array.from({ length: tracingsEach }, (_, hand) => [tracedOn(photo, 0.005, hand), photo.share] as const);
    }).flat();
    return rowOf('traced', coverage, all);
  });

/** Dots laid anew `runs` times over a few photos of each coverage. */
export const dotsRows = (n: number, runs: number, slips = 0, of: readonly number[] = coverages): Row[] =>
  of.map((coverage, i) => {
    const photos = (['patches', 'ragged', 'ragged', 'patches'] as const).map((pattern, k) =>
      drawnPhoto({ seed: 77 * i + k, coverage, pattern, turn: k + 1, glare: 0.02 * k, width: 480 }),
    );
    const all = Array.from({ length: runs }, (_, run) => {
      const photo = photos[run % photos.length] as DrawnPhoto;
      return [dotsOn(photo, n, slips, 31 * run + i), photo.share] as const;
    });
    return rowOf(`${n} dots`, coverage, all);
  });

/** Invented surfaces, from easy to tell apart to hardly. */
const surfaces: readonly { readonly name: string; readonly sound: Rgb; readonly green: Rgb }[] = [
  { name: 'brown, green', sound: [92, 70, 50], green: [112, 150, 128] },
  { name: 'dark, pale green', sound: [58, 48, 40], green: [150, 180, 160] },
  { name: 'golden, blue-green', sound: [120, 88, 48], green: [78, 140, 130] },
  { name: 'near black, dull green', sound: [44, 40, 36], green: [80, 98, 80] },
  { name: 'olive, green', sound: [88, 82, 58], green: [92, 118, 92] },
];

export interface MaskCase extends Drawing {
  readonly name: string;
  readonly quality: number;
}

/** Every coverage on every surface, with light, noise, glare, thinness, turn and JPEG quality all going through their ranges. */
export const maskCases: readonly MaskCase[] = coverages.flatMap((coverage, i) =>
  surfaces.map((surface, k) => ({
    ...surface,
    seed: 500 + 10 * i + k,
    coverage,
    pattern: (i + k) % 2 === 0 ? ('patches' as const) : ('ragged' as const),
    turn: (i + 2 * k) % 6,
    light: 0.4 * ((i + 3 * k) % 5),
    noise: 1 + ((2 * i + k) % 6),
    glare: 0.015 * ((i + k) % 4),
    thin: 0.2 * ((3 * i + k) % 4),
    leaves: 0.35 * Math.max(0, ((2 * i + 3 * k) % 5) - 2),
    width: 480,
    quality: 60 + 5 * ((i + 4 * k) % 8),
  })),
);

export interface MaskRow extends Row {
  readonly case: MaskCase;
  /** What the pixels alone say, off the truth. */
  readonly maskError: number;
  readonly leftOut: number;
  readonly refused: string;
}

/** How the check dots are judged: the share of slips, how many dots, those against the mask looked at again. */
export interface CheckedBy {
  readonly slips?: number;
  readonly dots?: number;
  readonly again?: boolean;
}

/** One case: kept as a JPEG, tapped and masked once, and its check dots judged anew `checks` times, unless said with slips of one in twenty. */
export const maskRow = async (made: MaskCase, checks: number, by: CheckedBy = {}): Promise<MaskRow> => {
  const { slips = 0.05, dots = 30, again = false } = by;
  const photo = drawnPhoto(made);
  const kept = await readJpeg(await asJpeg(photo, made.quality));
  const masked = maskOn(photo, kept, made.seed);
  const none = { case: made, maskError: Number.NaN, leftOut: Number.NaN };
  if (isRefused(masked)) {
    return {
      ...rowOf(made.name, photo.share, []),
      ...none,
      refused: masked.refused.map(({ code }) => code).join(', '),
    };
  }
  const all = Array.from(
    { length: checks },
    (_, k) => [masked.checked(slips, 7 * k + made.seed, dots, again), photo.share] as const,
  );
  const first = all[0]?.[0];
  return {
    ...rowOf(made.name, photo.share, all),
    case: made,
    maskError: masked.mask.share - photo.share,
    leftOut: masked.mask.leftOut,
    refused: first && isRefused(first) ? first.refused.map(({ code }) => code).join(', ') : '',
  };
};
