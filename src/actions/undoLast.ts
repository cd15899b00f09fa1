import type { NewEntry } from '../device/store';
import { type Entry, type Reason, undoingEntries } from '../engine/record';
import type { Desk, Outcome } from './desk';
import { inTurn } from './inTurn';
import { attempt, refuse } from './outcome';
import { deedName, refusal } from './reasonCodes';
import { whoIsAtWork } from './whoIsAtWork';

/**
 * Takes back this device's last deed, also after a restart: an import is taken out, a zone that was left is open again with
 * its touches, everything else gets an entry that brings back the state before. `name` is what was taken back.
 */
export const undoLast = (desk: Desk): Promise<Outcome<{ readonly name: Reason }>> =>
  attempt(() =>
    inTurn(desk.store, async () => {
      const last = await desk.store.lastDeed();
      if (!last) return refuse(refusal('nothing to undo', {}));
      if (last.arrived) {
        await desk.store.takeOut(last.deed);
        return { name: last.name };
      }
      const done = await desk.store.entriesOfDeed(last.deed);
      const touches = await desk.store.touchesOfDeed(last.deed);
      const histories = new Map<string, Entry[]>();
      for (const { thing } of done) if (!histories.has(thing)) histories.set(thing, await desk.store.entriesOf(thing));
      const deed = desk.newId();
      const at = desk.now();
      const entries = undoingEntries(done, (thing) => histories.get(thing) ?? [], {
        deed,
        at,
        by: await whoIsAtWork(desk),
        newId: desk.newId,
      });
      await desk.store.commit({
        entries: entries as NewEntry[],
        deed: { id: deed, name: deedName('deed: taken back', { code: last.name.code }), at, undoes: last.deed },
        reopensTouches: touches.map((touch) => touch.n),
      });
      return { name: last.name };
    }),
  );
