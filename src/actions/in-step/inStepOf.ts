import type { Desk, Question } from '../desk';
import { rememberedVersion } from '../keeping';
import { ask } from '../questions/question';
import { canPickFolder, isAtHand } from './folderAtHand';
import { type Joined, joinedTo, type Writer } from './joined';

/** How this device keeps in step, as a screen shows it. */
export interface InStep {
  readonly joined: Joined | null;
  /** The folder can be used without asking the person for anything. */
  readonly atHand: boolean;
  /** Made here since the last step came to its end. */
  readonly waiting: { readonly entries: number; readonly photos: number };
  /** Devices that write to the folder, with the role of who was last at work on each. */
  readonly who: readonly (Pick<Writer, 'at' | 'entries'> & { readonly here: boolean; readonly role: string })[];
  /** This browser lets a person pick a folder. */
  readonly canPick: boolean;
}

export const inStepOf = (desk: Desk): Question<InStep> =>
  ask(
    desk,
    'in step',
    () => `${desk.store.changes()} ${rememberedVersion(desk)}`,
    async () => {
      const joined = (await joinedTo(desk)) ?? null;
      const canPick = canPickFolder();
      if (!joined) return { joined, atHand: false, waiting: { entries: 0, photos: 0 }, who: [], canPick };
      const held = await desk.store.held();
      const before = joined.held ?? { entries: 0, photos: 0 };
      const roles = await desk.store.currents(joined.who.map(({ by }) => by));
      return {
        joined,
        atHand: await isAtHand(desk, joined),
        waiting: {
          entries: Math.max(0, held.entries - before.entries),
          photos: Math.max(0, held.photos - before.photos),
        },
        who: joined.who.map(({ writer, at, entries }, i) => ({
          at,
          entries,
          here: writer === joined.writer,
          role: String(roles[i]?.lead.body.role ?? ''),
        })),
        canPick,
      };
    },
  );
