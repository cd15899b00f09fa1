import { deviceBox } from '../../device/box';
import { StoreProblem } from '../../device/storeProblem';
import type { Desk } from '../desk';
import { inTurn } from '../inTurn';
import { rememberedAnew } from '../remembered';

/** What left this device. */
export interface Carried {
  /** 'step': written to the folder this device keeps in step with. */
  readonly what: 'bag' | 'survey' | 'step';
  /** Name of the file, or of the folder. */
  readonly name: string;
  /** Thing names of the works it was limited to; the whole collection when left out. */
  readonly sculptures?: readonly string[];
  readonly entries: number;
  /** Photos whose bytes went with it. */
  readonly photos: number;
  /** `desk.store.made` when the entries were read; as it is now, when left out. */
  readonly made?: number;
}

/** One line of what this device remembers of it. */
export interface CarriedRow extends Omit<Carried, 'made'> {
  /** ISO 8601 with offset. */
  readonly at: string;
  /** Device and number of the last entry it made by then. */
  readonly device: string;
  readonly made: number;
}

/** In the database; beside it, where it outlives a cleared one, only the last of each sort that held everything. */
const key = 'carried out';
const boxKey = (store: string): string => `${store}.carried`;

/** A fact of this project's own making: as many are remembered as a person may look back over. */
const remembered = 20;

/**
 * Notes that a file, or what a folder lacked, has left. To be called after it did, by every way out. Never refuses: what left has left,
 * also from a tab that only reads.
 */
export const carriedOut = (desk: Desk, { made, ...carried }: Carried): Promise<void> =>
  inTurn(desk.store, async () => {
    const { store } = desk;
    const row: CarriedRow = { ...carried, at: desk.now(), device: store.device, made: made ?? store.made };
    const rows = await carriedRows(desk).catch(nothingOf);
    // The invented garden leaves no trace.
    if (row.sculptures === undefined && !desk.invented)
      deviceBox.write(boxKey(store.name), [row, ...inBox(store.name).filter(({ what }) => what !== row.what)]);
    await store.setMeta(key, withRow(rows, row)).catch(nothingOf);
    rememberedAnew(desk);
  });

/** A store that cannot be written to now is no reason to refuse: the line beside it stands. */
const nothingOf = (error: unknown): [] => {
  if (!(error instanceof StoreProblem)) throw error;
  return [];
};

/** A folder is written to often: its last line stands for all before. */
const withRow = (rows: readonly CarriedRow[], row: CarriedRow): CarriedRow[] =>
  [row, ...rows.filter(({ what }) => what !== 'step' || row.what !== 'step')].slice(0, remembered);

/** What left this device, the last first. */
export const carriedRows = async (desk: Desk): Promise<readonly CarriedRow[]> =>
  (await desk.store.meta<readonly CarriedRow[]>(key)) ?? inBox(desk.store.name);

/**
 * What brings everything back where it is gone here, the last first, by what lies beside the database: a bag, and what left after it
 * (a survey without photos, a folder this device kept in step with).
 */
export const lastFilesOf = (store: string): readonly CarriedRow[] => {
  const rows = inBox(store);
  const bag = rows.findIndex(({ what }) => what === 'bag');
  return bag < 0 ? rows : rows.slice(0, bag + 1);
};

export const lastFiles = ({ store }: Desk): readonly CarriedRow[] => lastFilesOf(store.name);

const inBox = (store: string): readonly CarriedRow[] => {
  const kept = deviceBox.read(boxKey(store));
  return Array.isArray(kept) ? kept.filter(isRow) : [];
};

const isRow = (row: Partial<CarriedRow> | null): row is CarriedRow =>
  typeof row?.what === 'string' && typeof row.name === 'string' && typeof row.at === 'string';
