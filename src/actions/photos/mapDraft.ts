import type { CornerAt, Outline, Point, Ring } from '../../engine/photo';
import type { Desk, Outcome, Question } from '../desk';
import { inTurn } from '../inTurn';
import { attempt, must, refuse } from '../outcome';
import { ask } from '../questions/question';
import { refusal } from '../reasonCodes';
import { setElevationScale } from './setElevationScale';
import { setOutline } from './setOutline';

/** What is being drawn on the picture of a side: kept touch by touch on this device, in the record only once it is whole. */
export type MapDraft =
  /** Pieces closed before, and the corners of the one that is not closed yet. */
  | { readonly doing: 'outline'; readonly zone: string; readonly closed: Outline; readonly corners: Ring }
  /** Corners put elsewhere, and the one that is held. */
  | { readonly doing: 'corners'; readonly zone: string; readonly outline: Outline; readonly at: CornerAt | null }
  /** The ends of a length touched so far. */
  | { readonly doing: 'scale'; readonly ends: readonly Point[] }
  /** The zone water comes from, once it was touched. */
  | { readonly doing: 'water'; readonly from: string | null };

const keyOf = (elevation: string): string => `drawing on ${elevation}`;

const versions = new WeakMap<object, number>();

const read = async (desk: Desk, elevation: string): Promise<MapDraft | null> =>
  (await desk.store.meta<MapDraft | null>(keyOf(elevation))) ?? null;

/** What is being drawn, null where nothing is; also after a restart. */
export const mapDraft = (desk: Desk, elevation: string): Question<MapDraft | null> =>
  ask(
    desk,
    keyOf(elevation),
    () => `${versions.get(desk.store) ?? 0} ${desk.store.changes()}`,
    () => read(desk, elevation),
  );

/** Changes what is being drawn, one touch after the other however quickly they come; durable before anybody is told. */
export const changeMapDraft = (
  desk: Desk,
  elevation: string,
  change: (draft: MapDraft | null) => MapDraft | null,
): Promise<Outcome> =>
  attempt(() =>
    inTurn(desk.store, async () => {
      await desk.store.setMeta(keyOf(elevation), change(await read(desk, elevation)));
      versions.set(desk.store, (versions.get(desk.store) ?? 0) + 1);
      desk.store.tell();
      return {};
    }),
  );

/** What `commitChanges` notes so that a draft is forgotten with the deed it became. */
const forgotten = (elevation: string) => ({ key: keyOf(elevation), value: null });

/** Closes the piece being drawn, or keeps moved corners as they are now: the outline is said with all its pieces. */
export const keepOutlineDrawn = (desk: Desk, elevation: string): Promise<Outcome<{ readonly zone: string }>> =>
  attempt(async () => {
    const draft = await read(desk, elevation);
    if (draft?.doing !== 'outline' && draft?.doing !== 'corners') return refuse(refusal('nothing drawn', {}));
    const outline = draft.doing === 'outline' ? [...draft.closed, draft.corners] : draft.outline;
    must(await setOutline(desk, elevation, draft.zone, outline, forgotten(elevation)));
    return { zone: draft.zone };
  });

/** Says how long the length between the two ends touched is, metres. */
export const keepScaleDrawn = (desk: Desk, elevation: string, metres: number): Promise<Outcome> =>
  attempt(async () => {
    const draft = await read(desk, elevation);
    const [a, b] = draft?.doing === 'scale' ? draft.ends : [];
    if (!a || !b) return refuse(refusal('nothing drawn', {}));
    return must(
      await setElevationScale(desk, elevation, { a: [a[0], a[1]], b: [b[0], b[1]], metres }, forgotten(elevation)),
    );
  });
