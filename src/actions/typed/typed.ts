import { typedStart } from '../../device/store';
import type { Desk, Outcome, Question } from '../desk';
import { attempt } from '../outcome';
import { ask } from '../questions/question';

/** What was typed into a form and not kept: on this device only, no part of the record, never in a file or bag. */
export interface Typed {
  /** When the last of it was typed, ISO 8601 with offset. */
  readonly at: string;
  /** Address within the app where the form was open, and the title of the screen there. */
  readonly where: string;
  readonly title: string;
  /** By the names of the fields. Plain data. */
  readonly values: Readonly<Record<string, unknown>>;
}

export interface TypedHeld extends Typed {
  /** The form and its things, as given to holdTyped. */
  readonly place: string;
}

/** What was last asked for at a place while an earlier writing is under way: only the latest is written. */
interface Slot {
  wanted: Typed | null | undefined;
  running: Promise<Outcome> | undefined;
}

const slots = new WeakMap<Desk['store'], Map<string, Slot>>();
const versions = new WeakMap<Desk['store'], number>();

const slotOf = ({ store }: Desk, place: string): Slot => {
  const here = slots.get(store) ?? new Map<string, Slot>();
  slots.set(store, here);
  const slot = here.get(place) ?? { wanted: undefined, running: undefined };
  here.set(place, slot);
  return slot;
};

const written = async (desk: Desk, place: string, slot: Slot): Promise<Outcome> => {
  let outcome: Outcome = { ok: true };
  try {
    while (slot.wanted !== undefined) {
      const typed = slot.wanted;
      slot.wanted = undefined;
      outcome = await attempt(async () => {
        if (typed) await desk.store.setMeta(typedStart + place, typed);
        else await desk.store.forgetMeta(typedStart + place);
        return {};
      });
      versions.set(desk.store, (versions.get(desk.store) ?? 0) + 1);
    }
  } finally {
    // In the same breath as the last look at what is wanted: nothing asked for later may wait for a writing that is over.
    slot.running = undefined;
  }
  return outcome;
};

const put = (desk: Desk, place: string, typed: Typed | null): Promise<Outcome> => {
  const slot = slotOf(desk, place);
  slot.wanted = typed;
  slot.running ??= written(desk, place, slot);
  return slot.running;
};

/**
 * Holds what is typed, as it is typed; durable once it resolves. `place` names the form and its things. Only the latest counts, however
 * quickly they come.
 */
export const holdTyped = (desk: Desk, place: string, typed: Typed): Promise<Outcome> => put(desk, place, typed);

/** It was kept, or is not wanted any more. */
export const forgetTyped = async (desk: Desk, place: string): Promise<Outcome> => {
  const outcome = await put(desk, place, null);
  desk.store.tell();
  return outcome;
};

/** What was typed there before and not kept. A fault of the store gives none: the form opens all the same. */
export const typedAt = async (desk: Desk, place: string): Promise<Typed | undefined> => {
  const read = await attempt(async () => {
    await slotOf(desk, place).running;
    return { typed: await desk.store.meta<Typed>(typedStart + place) };
  });
  return read.ok ? read.typed : undefined;
};

/** All that was typed and not kept, the latest first. */
export const typedNotKept = (desk: Desk): Question<readonly TypedHeld[]> =>
  ask(
    desk,
    'typed not kept',
    () => `${versions.get(desk.store) ?? 0} ${desk.store.changes()}`,
    async () =>
      (await desk.store.metas<Typed>(typedStart))
        .map(([place, typed]) => ({ ...typed, place }))
        .sort((a, b) => (a.at < b.at ? 1 : -1)),
  );
