import { pixelClass } from '../../engine/photo';
import { near } from './near';

/** What became of a pixel between two photos. */
export const changeKind = { neither: 0, newly: 1, noLonger: 2, still: 3, leftOut: 4, outside: 5 } as const;

/** Two photos told pixel by pixel on the same grid, row by row, some way beyond the part that is asked about. */
export interface TwoTold {
  readonly width: number;
  readonly height: number;
  /** 1 in the part. */
  readonly inPart: Uint8Array;
  readonly earlier: Uint8Array;
  readonly later: Uint8Array;
}

const isGreen = (of: Uint8Array): Uint8Array => of.map((one) => (one === pixelClass.green ? 1 : 0));

/**
 * Kind of change of each pixel. Green is new only where none lay within `reach` pixels before, gone only where none lies within it after:
 * an edge that moved by less than the photos may be misplaced is no change, nor is green that may have moved over the edge of the part.
 */
export const changeKinds = ({ width, height, inPart, earlier, later }: TwoTold, reach: number): Uint8Array => {
  const nearBefore = near(isGreen(earlier), width, height, reach);
  const nearAfter = near(isGreen(later), width, height, reach);
  return later.map((after, at) => {
    const before = earlier[at] as number;
    if (!inPart[at]) return changeKind.outside;
    if (before > pixelClass.green || after > pixelClass.green) return changeKind.leftOut;
    if (after === pixelClass.green) return nearBefore[at] ? changeKind.still : changeKind.newly;
    if (before === pixelClass.green) return nearAfter[at] ? changeKind.still : changeKind.noLonger;
    return changeKind.neither;
  });
};

export const changeCounts = (kinds: Uint8Array): Record<keyof typeof changeKind, number> => {
  const many = new Uint32Array(8);
  for (let at = 0; at < kinds.length; at++) (many[kinds[at] as number] as number)++;
  const of = (kind: number): number => many[kind] as number;
  return {
    neither: of(changeKind.neither),
    newly: of(changeKind.newly),
    noLonger: of(changeKind.noLonger),
    still: of(changeKind.still),
    leftOut: of(changeKind.leftOut),
    outside: of(changeKind.outside),
  };
};
