import { type Outline, type Ring, readSelector, writeSelector } from '../../engine/photo';
import { type BodyOf, nameOf, type Thing } from '../../engine/record';
import type { Desk, Outcome, Question } from '../desk';
import { inTurn } from '../inTurn';
import { attempt } from '../outcome';
import { ask } from '../questions/question';
import { asThingOfKind } from './asThingOfKind';

/** Patches traced, dots counted, or a mask of the pixels with its check dots. */
export type WayOfMeasuring = 'traced' | 'dots' | 'photo';

export type Working = BodyOf<'measure'>['working'];

/** What is measured: one kind of finding, on one photo, of one zone or sentinel square, in one way. */
export interface MeasureOf {
  readonly photo: string;
  readonly about: string;
  /** Code of trade/kinds. */
  readonly kind: string;
  readonly way: WayOfMeasuring;
}

/** How far a measurement is on this device: kept touch by touch beside the record, and it makes no figure before it is whole. */
export interface MeasureDraft {
  /** The part of the photo that is measured. */
  readonly part: Outline;
  readonly working: Working;
  /** Corners of a patch that is not closed yet. */
  readonly corners: Ring;
}

/** With the entry of the figure that stood when the last touch was made: once another stands, the touches are no longer the newest. */
interface Kept extends MeasureDraft {
  readonly over: string;
}

/** What is worked on, and what the record holds. */
export interface MeasureAtHand {
  /** The touches so far: those made here after the figure was kept, or those the figure was made of. Null where nothing was begun. */
  readonly draft: MeasureDraft | null;
  readonly measure: Thing<'measure'> | null;
  /** The touches are no longer those the figure was made of. */
  readonly differs: boolean;
}

export const measureName = ({ photo, about, kind, way }: MeasureOf): string => nameOf.measure(photo, about, kind, way);

const keyOf = (of: MeasureOf): string => `measuring ${measureName(of)}`;

/** Touches of measurements, and where each measuring stands: apart, so that a dot judged does not make a screen read all else anew. */
type NoteOf = 'touches' | 'place';

const versions: Readonly<Record<NoteOf, WeakMap<object, number>>> = { touches: new WeakMap(), place: new WeakMap() };

/** Rises whenever a note of that sort was kept on this device. */
export const notesVersion = (desk: Desk, of: NoteOf): number => versions[of].get(desk.store) ?? 0;

/** Notes kept on this device beside the record; durable before anybody is told. */
export const keepNote = async (desk: Desk, of: NoteOf, key: string, value: unknown): Promise<void> => {
  await desk.store.setMeta(key, value);
  versions[of].set(desk.store, notesVersion(desk, of) + 1);
  desk.store.tell();
};

export const readAtHand = async (desk: Desk, of: MeasureOf): Promise<MeasureAtHand> => {
  const kept = (await desk.store.meta<Kept | null>(keyOf(of))) ?? null;
  const measure = (await asThingOfKind(desk, 'measure', measureName(of))) ?? null;
  if (kept && (!measure || kept.over === measure.lead.id)) return { draft: kept, measure, differs: measure !== null };
  if (!measure) return { draft: null, measure, differs: false };
  const part = readSelector(measure.body.selector.value) ?? [];
  return { draft: { part, working: measure.body.working, corners: [] }, measure, differs: false };
};

/** How far a measurement is; also after a restart. */
export const measureAtHand = (desk: Desk, of: MeasureOf): Question<MeasureAtHand> =>
  ask(
    desk,
    keyOf(of),
    () => `${notesVersion(desk, 'touches')} ${desk.store.changes()}`,
    () => readAtHand(desk, of),
  );

/** Changes the touches so far, one change after the other however quickly they come. */
export const changeDraft = (
  desk: Desk,
  of: MeasureOf,
  change: (draft: MeasureDraft | null) => MeasureDraft,
): Promise<MeasureDraft> =>
  inTurn(desk.store, async () => {
    const { draft, measure } = await readAtHand(desk, of);
    const next = change(draft);
    // As a selector holds it: the dots laid over it now are those laid over it when the record is read again.
    const part = readSelector(writeSelector(next.part)) ?? [];
    const kept: Kept = { ...next, part, over: measure?.lead.id ?? '' };
    await keepNote(desk, 'touches', keyOf(of), kept);
    return next;
  });

/**
 * Keeps the touches: a corner more, a patch, a spot, a stroke of the brush. One touch is given what was touched before it, of which a
 * screen may not know yet, so that none is lost however quickly they come.
 */
export const keepTouches = (
  desk: Desk,
  of: MeasureOf,
  touches: MeasureDraft | ((before: MeasureDraft | null) => MeasureDraft),
): Promise<Outcome> =>
  attempt(async () => {
    await changeDraft(desk, of, typeof touches === 'function' ? touches : () => touches);
    return {};
  });

/** What `commitChanges` notes so that the touches so far are forgotten with the deed. */
export const forgetTouches = (of: MeasureOf) => ({ key: keyOf(of), value: null });
