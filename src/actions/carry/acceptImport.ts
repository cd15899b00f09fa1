import type { Desk, Outcome } from '../desk';
import { inTurn } from '../inTurn';
import { attempt, refuse } from '../outcome';
import { deedName, refusal } from '../reasonCodes';
import type { CarryPreview } from './openSurveyFile';

export interface AcceptOptions {
  /** The person knows they are two collections and wants their works in one. */
  readonly otherCollection?: boolean;
  /** Called between bites, while all is one transaction still. */
  progress?(done: number, all: number): void;
}

export interface Accepted {
  /** '' where everything was here already. */
  readonly deed: string;
  readonly added: number;
  readonly already: number;
  /** This tablet is a copy of another and got a device name of its own. */
  readonly copiedTablet: boolean;
}

/** Stores what the preview showed, all of it or nothing. */
export const acceptImport = (
  desk: Desk,
  preview: CarryPreview,
  options: AcceptOptions = {},
): Promise<Outcome<Accepted>> =>
  attempt(() =>
    inTurn(desk.store, async () => {
      if (preview.inventedIntoReal) refuse(refusal('invented into real', {}));
      if (preview.otherCollection && !options.otherCollection)
        refuse(refusal('other collection', preview.otherCollection));
      const name = deedName('deed: survey carried in', { entries: preview.entries.length });
      const deed = { id: desk.newId(), name, at: desk.now() };
      const { progress } = options;
      const taken = await desk.store.takeIn(preview.entries, deed, {
        collection: preview.collection,
        ...(progress ? { progress } : {}),
      });
      return { deed: taken.added > 0 ? deed.id : '', ...taken };
    }),
  );

/** Physically removes exactly what that import added; refused once something here builds on it. */
export const undoImport = (desk: Desk, deed: string): Promise<Outcome> =>
  attempt(() =>
    inTurn(desk.store, async () => {
      await desk.store.takeOut(deed);
      return {};
    }),
  );
