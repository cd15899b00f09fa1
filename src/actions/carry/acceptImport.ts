import type { Desk, Outcome } from '../desk';
import { inTurn } from '../inTurn';
import { attempt, refuse } from '../outcome';
import { deedName, refusal } from '../reasonCodes';
import { dropArriving } from './arriving';
import type { CarryPreview } from './openSurveyFile';

export interface AcceptOptions {
  /** The person knows they are two collections and wants their works in one. */
  readonly otherCollection?: boolean;
  /** Of the photos: bytes kept of all. */
  heard?(done: number, all: number): void;
  /** Left off before the entries are stored: nothing stays behind. */
  readonly signal?: AbortSignal | undefined;
  /** Of the entries: called between bites, while all is one transaction still. */
  progress?(done: number, all: number): void;
}

export interface Accepted {
  /** '' where everything was here already. */
  readonly deed: string;
  readonly added: number;
  readonly already: number;
  /** Photos whose bytes came with it. */
  readonly photos: number;
  /** This tablet is a copy of another and got a device name of its own. */
  readonly copiedTablet: boolean;
}

/** Stores what the preview showed, all of it or nothing: the photos first, one by one, and with the entries they count. */
export const acceptImport = (
  desk: Desk,
  preview: CarryPreview,
  options: AcceptOptions = {},
): Promise<Outcome<Accepted>> =>
  attempt(async () => {
    if (preview.inventedIntoReal) refuse(refusal('invented into real', {}));
    if (preview.otherCollection && !options.otherCollection)
      refuse(refusal('other collection', preview.otherCollection));
    const name = deedName('deed: survey carried in', { entries: preview.entries.length });
    const deed = { id: desk.newId(), name, at: desk.now() };
    const ends =
      preview.photos.length > 0
        ? await (await import('./photosArriving')).photosArriving(desk, deed.id, preview, options)
        : undefined;
    const { progress } = options;
    try {
      const taken = await inTurn(desk.store, () =>
        desk.store.takeIn(preview.entries, deed, {
          collection: preview.collection,
          ...(ends ? { ends } : {}),
          ...(progress ? { progress } : {}),
        }),
      );
      return { deed: taken.added > 0 ? deed.id : '', photos: ends?.photos.length ?? 0, ...taken };
    } catch (error) {
      if (ends) await dropArriving(desk, ends).catch(() => undefined);
      throw error;
    }
  });

/** Physically removes exactly what that import added, photos too; refused once something here builds on it. */
export const undoImport = (desk: Desk, deed: string): Promise<Outcome> =>
  attempt(() =>
    inTurn(desk.store, async () => {
      await desk.store.takeOut(deed);
      return {};
    }),
  );
