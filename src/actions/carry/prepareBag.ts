import { type BagStep, bagBeside, dropOwn, holdReady } from '../../device/bag';
import { pickForSaving } from '../../device/files';
import type { Desk, Outcome } from '../desk';
import { carriedOut } from '../keeping';
import { attempt } from '../outcome';
import { type Prepared, type PrepareOptions, preparedName } from './prepareSurvey';

/** A bag made, read back whole and ready to leave. */
export interface BagPrepared extends Omit<Prepared, 'bytes' | 'photosStay'> {
  readonly file: File;
  /** Photos in it, and their bytes. */
  readonly photos: number;
  readonly photoBytes: number;
  /** Photos it speaks of whose bytes are not here. */
  readonly missing: number;
  /** Of them those whose bytes here are damaged. */
  readonly damaged: number;
  /** It lies where the person picked already, and has left. */
  readonly left: boolean;
  /** Gives back the room it takes on this device. */
  letGo(): Promise<void>;
}

export interface BagOptions extends PrepareOptions {
  /** Asks where to, from a tap, and writes straight there: where there is no room for it here. */
  readonly straight?: boolean;
  heard?(step: BagStep): void;
  readonly signal?: AbortSignal;
}

/** The survey with its photos, written and read back beside the page. Undefined where it was left off: nothing of it stays. */
export const prepareBag = (
  desk: Desk,
  { sculptures, without = [], straight = false, heard, signal }: BagOptions = {},
): Promise<Outcome<{ readonly prepared: BagPrepared | undefined }>> =>
  attempt(async () => {
    const id = desk.newId();
    const name = preparedName(desk, 'survey.zip');
    const into = straight ? await pickForSaving(name) : undefined;
    const release = into ? () => undefined : holdReady();
    const letGo = async () => {
      if (!into) await dropOwn(id);
      release();
    };
    const { store, collection } = desk;
    const { made } = store;
    let prepared: BagPrepared | undefined;
    try {
      const asked = {
        id,
        store: store.name,
        storeId: store.id,
        collection,
        name,
        day: desk.today(),
        sculptures,
        without,
        into,
      };
      const told = await bagBeside('write', asked, { ...(heard ? { heard } : {}), signal });
      if (told) {
        const { damaged, ...rest } = told;
        prepared = {
          ...rest,
          name: told.file.name,
          mime: bagMime,
          damaged: damaged.length,
          left: into !== undefined,
          made,
          sculptures,
          letGo,
        };
      }
    } finally {
      if (!prepared) await letGo();
    }
    if (prepared?.left) await leftWith(desk, prepared);
    return { prepared };
  });

const bagMime = 'application/zip';

/** A table of findings, a calendar or a paper is not the survey. */
const noSurvey = ['text/csv', 'text/calendar', 'text/html'];

/** Notes that it has left. */
export const leftWith = (desk: Desk, prepared: Prepared | BagPrepared): Promise<void> => {
  if (noSurvey.includes(prepared.mime)) return Promise.resolve();
  const { name, entries, made, sculptures } = prepared;
  const isBag = 'file' in prepared;
  return carriedOut(desk, {
    what: isBag ? 'bag' : 'survey',
    name,
    entries,
    photos: isBag ? prepared.photos : 0,
    made,
    ...(sculptures ? { sculptures } : {}),
  });
};
