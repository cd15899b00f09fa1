import { constants, fromLogit } from '../condition';
import { type Drawable, type DrawableFinding, type DrawableZone, spread } from './drawable';

/** What one draw makes of a zone. */
export interface Drew {
  readonly urgency: number;
  readonly burden: number;
}

/** How far things are drawn: 1 as they err, 0 as if nothing erred. */
export interface Errs {
  readonly weights: number;
  readonly coverages: number;
}

/** A place in the order as one number: the urgency class goes before any burden. */
export const keyOf = ({ urgency, burden }: Drew): number => urgency * beyondAnyBurden + burden;
const beyondAnyBurden = 1e10;

/** The values of `many` draws of everything that is shared, row by row. */
export const drawShared = (
  { shared }: Drawable,
  many: number,
  errs: Errs = { weights: 1, coverages: 1 },
): readonly Float64Array[] =>
  shared.map(({ what, own }) => {
    const row = new Float64Array(many);
    for (let i = 0; i < many; i++) {
      row[i] =
        what === 'kind'
          ? 1 + errs.weights * spread.kind * (2 * own.uniform() - 1)
          : errs.coverages * spread[what] * own.normal();
    }
    return row;
  });

/** Keys of a zone in `many` draws, written to `into`; `kept` and `presses` are room to work in. */
export const drawZone = (
  zone: DrawableZone,
  shared: readonly Float64Array[],
  into: Float64Array,
  room: { readonly kept: Float64Array; readonly presses: Uint8Array },
  errs: Errs = { weights: 1, coverages: 1 },
): void => {
  const many = into.length;
  const { kept, presses } = room;
  kept.fill(1);
  presses.fill(0);
  for (const finding of zone.findings) drawFinding(finding, shared, kept, presses, errs.coverages);
  const { growth, size, set, floor, actionLevel } = zone;
  for (let i = 0; i < many; i++) {
    const index = 100 * (kept[i] as number);
    const byRule = Math.max(floor, index < actionLevel ? constants.actionUrgency.value : 0, presses[i] as number);
    const more = growth ? growth.at + errs.coverages * growth.sd * growth.own.normal() : 0;
    into[i] = keyOf({ urgency: set ?? byRule, burden: size * (100 - index) + Math.max(0, more) });
  }
};

const drawFinding = (
  { hazard, kind, rest, extent, pressesFrom, own }: DrawableFinding,
  shared: readonly Float64Array[],
  kept: Float64Array,
  presses: Uint8Array,
  errs: number,
): void => {
  const factor = shared[kind] as Float64Array;
  const cap = constants.lossCap.value;
  const day = extent.told === 'share' && extent.shared ? shared[extent.shared.day] : undefined;
  const person = extent.told === 'share' && extent.shared ? shared[extent.shared.person] : undefined;
  for (let i = 0; i < kept.length; i++) {
    let share = 1;
    let root = 1;
    if (extent.told === 'certain') root = extent.extent;
    else {
      share =
        extent.told === 'not'
          ? own.uniform()
          : fromLogit(
              extent.at + errs * extent.sd * own.normal() + (day ? (day[i] as number) + (person?.[i] ?? 0) : 0),
            );
      root = Math.sqrt(share);
      if (share >= pressesFrom) presses[i] = 1;
    }
    const loss = Math.min(cap, Math.min(1, hazard * (factor[i] as number)) * rest * root);
    kept[i] = (kept[i] as number) * (1 - loss);
  }
};
