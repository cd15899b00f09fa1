import { orderOfNeed, type Rank } from '../condition';
import type { Figure, Reason } from '../record';
import { drawable, type FirmNeed } from './drawable';
import { firmnessNumbers, groupsOfPlaces } from './numbers';
import { because } from './reasonCodes';
import { drawShared, drawZone, type Errs } from './redraws';

/** How firm the place of one zone in the order of need is. */
export interface FirmPlace {
  readonly sculpture: string;
  readonly zone: string;
  /** Its place as it stands, with the 90 % range of its places over the redraws. */
  readonly place: Figure;
  /** It is asked whether it stays among the first so many; null where there are hardly more zones than places. */
  readonly among: number | null;
  /** Share of redraws in which it does, 0 to 1. */
  readonly share: number | null;
  readonly word: 'firm' | 'could be elsewhere' | null;
  readonly reasons: readonly Reason[];
}

export interface Firmness {
  readonly draws: number;
  readonly seed: number;
  /** In order of need. */
  readonly zones: readonly FirmPlace[];
  readonly reasons: readonly Reason[];
}

export interface FirmnessOptions {
  readonly draws?: number;
  /** How far things err: 1 as they do, 0 not at all. */
  readonly errs?: Errs;
  readonly progress?: (done: number, all: number) => void;
}

/** The least group of places that holds a rank, of groups that leave at least one zone out; null where there is none. */
export const groupOf = (rank: number, zones: number): number | null =>
  groupsOfPlaces.find((places) => places >= rank && places < zones) ?? null;

/** Draws worked out together: enough that little is set up anew, few enough that a person is told how far it is. */
const together = 50;

/**
 * The order of need drawn again and again: hazards within a fifth, coverages within their error, day and person shared. Gives for each
 * zone in what share of the draws it stays in its group of places. Areas and what a person set are not redrawn.
 */
export const firmness = (needs: readonly FirmNeed[], seed: number, options: FirmnessOptions = {}): Firmness => {
  const steps = firmnessInSteps(needs, seed, options);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    options.progress?.(step.value, options.draws ?? firmnessNumbers.draws.value);
  }
};

/** The same in steps, each giving how many draws are done, so that whoever runs it may pause or leave off between them. */
export function* firmnessInSteps(
  needs: readonly FirmNeed[],
  seed: number,
  { draws = firmnessNumbers.draws.value, errs }: FirmnessOptions = {},
): Generator<number, Firmness> {
  const ready = drawable(needs, seed);
  const ranks = new Map(orderOfNeed(needs).zones.map((rank) => [`${rank.sculpture} ${rank.zone}`, rank]));
  const count = ready.zones.length;
  const places = ready.zones.map(() => new Uint16Array(draws));
  for (let done = 0; done < draws; ) {
    const many = Math.min(together, draws - done);
    const shared = drawShared(ready, many, errs);
    const room = { kept: new Float64Array(many), presses: new Uint8Array(many) };
    const keys = ready.zones.map((zone) => {
      const row = new Float64Array(many);
      drawZone(zone, shared, row, room, errs);
      return row;
    });
    const sorted = new Float64Array(count);
    for (let draw = 0; draw < many; draw++) {
      for (let z = 0; z < count; z++) sorted[z] = (keys[z] as Float64Array)[draw] as number;
      sorted.sort();
      for (let z = 0; z < count; z++)
        (places[z] as Uint16Array)[done + draw] = placeOf((keys[z] as Float64Array)[draw] as number, sorted);
    }
    done += many;
    yield done;
  }
  const zones = ready.zones.flatMap(({ sculpture, zone, set }, z) => {
    const rank = ranks.get(`${sculpture} ${zone}`);
    return rank ? [placeAmong(rank, zone, set !== null, places[z] as Uint16Array, count)] : [];
  });
  const percent = 100 * firmnessNumbers.weight.value;
  return {
    draws,
    seed,
    zones: zones.sort((a, b) => a.place.value - b.place.value || (a.zone < b.zone ? -1 : 1)),
    reasons: [because('firmness: what was redrawn', { draws, percent })],
  };
}

/** Place from the top: how many keys are over this one, and one. `sorted` rises. */
const placeOf = (key: number, sorted: Float64Array): number => {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] as number) <= key) low = middle + 1;
    else high = middle;
  }
  return sorted.length - low + 1;
};

const placeAmong = (rank: Rank, zone: string, set: boolean, places: Uint16Array, zones: number): FirmPlace => {
  const draws = places.length;
  const among = groupOf(rank.rank, zones);
  const share = among === null ? null : places.reduce((sum, place) => sum + (place <= among ? 1 : 0), 0) / draws;
  const sorted = Uint16Array.from(places).sort();
  const low = Math.min(rank.rank, sorted[Math.floor(0.05 * (draws - 1))] as number);
  const high = Math.max(rank.rank, sorted[Math.ceil(0.95 * (draws - 1))] as number);
  const range = because('firmness: places it may have', { low, high });
  return {
    sculpture: rank.sculpture,
    zone,
    place: { value: rank.rank, low, high, reasons: [range] },
    among,
    share,
    word: share === null ? null : share >= firmnessNumbers.firmFrom.value ? 'firm' : 'could be elsewhere',
    reasons: [
      share === null || among === null
        ? because('firmness: near the end of the list', { zones })
        : because('firmness: stays among the first', { places: among, ofHundred: Math.round(100 * share) }),
      range,
      ...(set ? [because('firmness: urgency set by a person')] : []),
    ],
  };
};
