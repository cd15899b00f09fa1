import type { ZoneTouch } from '../../engine/record';
import type { Desk, Outcome } from '../desk';
import { inTurn } from '../inTurn';
import { keepPhoto } from '../keepPhoto';
import { attempt, must, refuse } from '../outcome';
import type { AgainTouch } from './askAgain';
import { roundRefusal } from './reasonCodes';
import { memoryOf } from './roundMemory';

/** One touch on the pad: durable in the log of touches before the screen shows it. */
export const touchZone = (desk: Desk, round: string, zone: string, touch: ZoneTouch | AgainTouch): Promise<Outcome> =>
  attempt(() =>
    inTurn(desk.store, async () => {
      const memory = memoryOf(desk, round);
      if (!memory.get()) await memory.ready();
      const row = await desk.store.touch({ round, zone, at: desk.now(), by: desk.surveyor(), touch });
      memory.addTouch(row);
      return {};
    }),
  );

/**
 * Keeps a photo taken for a finding (its key) or for the zone ('zone'), and puts it where it was expected. Call `touchZone` with
 * 'photo expected' before the camera opens: the browser may be closed behind it.
 */
export const photoForZone = (desk: Desk, round: string, zone: string, of: string, file: File): Promise<Outcome> =>
  attempt(async () => {
    const memory = memoryOf(desk, round);
    const atHand = (await memory.ready()) ?? refuse(roundRefusal('round: not here', {}));
    const role = of === 'zone' ? 'zone' : 'finding';
    const { photo } = must(
      await memory.during(() => keepPhoto(desk, atHand.record.sculpture.thing, file, role, { round, zone }), []),
    );
    return must(await touchZone(desk, round, zone, { do: 'photo', of, photo }));
  });
