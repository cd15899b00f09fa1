import type { DeedRow, TouchRow } from '../../device/store';
import type { ZoneTouch } from '../../engine/record';
import type { Desk, Outcome } from '../desk';
import { inTurn } from '../inTurn';
import { attempt, must, refuse } from '../outcome';
import { refusal } from '../reasonCodes';
import { undoLast } from '../undoLast';
import type { AgainTouch } from './askAgain';
import { memoryOf, type RoundMemory } from './roundMemory';

/** What Undo would take back: the last touch on an open pad, or the last deed, whichever is newer. */
export type Undoable =
  | { readonly what: 'touch'; readonly zone: string; readonly touch: ZoneTouch | AgainTouch }
  | { readonly what: 'deed'; readonly name: DeedRow['name'] };

const newest = (memory: RoundMemory): { touch?: TouchRow; deed?: DeedRow } => {
  const touch = memory.allOpenTouches().at(-1);
  const deed = memory.get()?.lastDeed;
  if (touch && deed) return Date.parse(touch.at) >= Date.parse(deed.at) ? { touch } : { deed };
  return { ...(touch ? { touch } : {}), ...(deed ? { deed } : {}) };
};

export const undoable = (memory: RoundMemory): Undoable | undefined => {
  const { touch, deed } = newest(memory);
  if (touch) return { what: 'touch', zone: touch.zone, touch: touch.touch as ZoneTouch | AgainTouch };
  return deed && { what: 'deed', name: deed.name };
};

/** A photo is one act of a person: opening the camera and the picture that came back are taken back together. */
const oneAct = (memory: RoundMemory, touch: TouchRow): readonly number[] => {
  const before = memory
    .openTouches(touch.zone)
    .filter((row) => row.n < touch.n)
    .at(-1);
  const photo = (touch.touch as ZoneTouch).do === 'photo';
  return photo && before && (before.touch as ZoneTouch).do === 'photo expected' ? [before.n, touch.n] : [touch.n];
};

/**
 * Takes back one touch, or the last deed. Leaving a zone taken back opens the zone as it was before it was left. Gives the zone to
 * show; none where the deed was of no zone.
 */
export const undoInRound = (desk: Desk, round: string): Promise<Outcome<{ readonly zone: string | undefined }>> =>
  attempt(async () => {
    const memory = memoryOf(desk, round);
    await memory.ready();
    await inTurn(desk.store, async () => undefined);
    const { touch, deed } = newest(memory);
    if (touch) {
      const ns = oneAct(memory, touch);
      await inTurn(desk.store, () => desk.store.dropTouches(ns));
      memory.dropTouches(ns);
      if (ns.length > 1 && deedIs(await desk.store.lastDeed(), 'deed: photo kept')) {
        must(await undoLast(desk));
        await memory.reload();
      }
      return { zone: touch.zone };
    }
    if (!deed) return refuse(refusal('nothing to undo', {}));
    must(await undoLast(desk));
    await memory.reload();
    const zone = deed.name.params.zone;
    return { zone: deed.name.params.round === round && typeof zone === 'string' ? zone : undefined };
  });

const deedIs = (deed: DeedRow | undefined, code: string): boolean => deed?.name.code === code;
