import type { MapDraft, Side } from '../../actions';
import { joined, nearestCorner, type Outline, type Point, type Ring, type Size } from '../../engine/photo';

/** Begins a zone anew, or adds a piece to those it has. */
export const beginZone = (zone: string, closed: Outline = []): MapDraft => ({
  doing: 'outline',
  zone,
  closed,
  corners: [],
});

/** Corners of the other zones, which a new corner may join. */
export const neighboursOf = ({ outlines }: Pick<Side, 'outlines'>, zone: string): Outline =>
  outlines.filter((one) => one.zone !== zone).flatMap(({ outline }) => outline);

/** True where a touch on the first corner closes the piece. */
export const closes = (corners: Ring, at: Point, size: Size): boolean => {
  const first = corners[0];
  return corners.length >= 3 && first !== undefined && joined(at, [[first]], size) === first;
};

/** The draft after a touch on the picture; itself where the touch means nothing. */
export const touched = (draft: MapDraft, at: Point, neighbours: Outline, size: Size): MapDraft => {
  if (draft.doing === 'outline') return { ...draft, corners: [...draft.corners, joined(at, neighbours, size)] };
  if (draft.doing === 'corners') return { ...draft, at: nearestCorner(draft.outline, at, size) ?? null };
  if (draft.doing === 'scale') return draft.ends.length < 2 ? { ...draft, ends: [...draft.ends, at] } : draft;
  return draft;
};

/** One touch less. */
export const takenBack = (draft: MapDraft): MapDraft => {
  if (draft.doing === 'outline') return { ...draft, corners: draft.corners.slice(0, -1) };
  if (draft.doing === 'scale') return { ...draft, ends: draft.ends.slice(0, -1) };
  return draft;
};

/** True where leaving a draft would lose touches. */
export const holdsWork = (draft: MapDraft): boolean =>
  draft.doing === 'corners' ||
  (draft.doing === 'outline' && draft.corners.length > 0) ||
  (draft.doing === 'scale' && draft.ends.length > 0);
