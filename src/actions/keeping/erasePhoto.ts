import { idPart } from '../../engine/record';
import type { Desk, Outcome } from '../desk';
import { inTurn } from '../inTurn';
import { attempt, refuse } from '../outcome';
import { deedName, refusal } from '../reasonCodes';
import { erasures, reasonGiven } from './erasure';

/**
 * Erases a photo for good: its bytes, its thumbnail and all that was said of it as a photo. What was measured or drawn on it stays and
 * reads that the photo is gone. Its bytes are refused from then on. Not taken back by Undo.
 */
export const erasePhoto = (desk: Desk, photo: string, { reason }: { readonly reason: string }): Promise<Outcome> =>
  attempt(() =>
    inTurn(desk.store, async () => {
      const because = reasonGiven(reason);
      const own = await desk.store.entriesOf(photo);
      const within = own[0]?.within ?? refuse(refusal('not here', { thing: photo }));
      const deed = desk.newId();
      const entries = own.map((entry) => entry.id);
      await desk.store.commit({
        entries: await erasures(desk, deed, within, { of: 'photo', entries, hashes: [idPart(photo)], reason: because }),
        deed: { id: deed, name: deedName('deed: photo erased', {}), at: desk.now() },
      });
      return {};
    }),
  );
