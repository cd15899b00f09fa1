import type { Reason } from '../record';
import { treatments } from '../trade';
import type { ColumnUse } from './columns';
import { fingerprint } from './fingerprint';
import { folded } from './folded';
import { type Match, matchWork, matchZones, type WorkHere } from './matching';
import { type DayOrder, readDay } from './readDay';
import { bringReason } from './reasonCodes';
import type { ListRow } from './splitRows';

/** How the person reads the list: what each column is, and what she chose where the list does not say. */
export interface Reading {
  readonly uses: readonly ColumnUse[];
  readonly works: readonly WorkHere[];
  /** Work for all rows, where no column says it. */
  readonly workForAll?: string | undefined;
  /** Works chosen by hand for what the column says, by its folded text. */
  readonly workFor: Readonly<Record<string, string>>;
  /** Treatment for all rows, where no column says it. */
  readonly typeForAll?: string | undefined;
  /** Treatments chosen for what the column says, by its folded text. */
  readonly typeFor: Readonly<Record<string, string>>;
  readonly order?: DayOrder | undefined;
  /** YYYY-MM-DD */
  readonly today: string;
}

export interface BroughtTreatment {
  readonly sculpture: string;
  readonly zones: readonly string[];
  readonly type: string;
  readonly date: string;
  readonly product?: string;
  readonly coats?: number;
  readonly by?: string;
  readonly note?: string;
}

export interface RowRead {
  readonly line: number;
  readonly cells: readonly string[];
  /** Missing where the row cannot be taken; `problems` then says why. */
  readonly treatment?: BroughtTreatment;
  readonly problems: readonly Reason[];
  /** What a person should know of a row that is taken. */
  readonly remarks: readonly Reason[];
}

const longest = { product: 300, by: 300, note: 4000 } as const;
/** What a body of a treatment takes. */
const mostCoats = 20;

export const cellsFor = (row: Pick<ListRow, 'cells'>, uses: readonly ColumnUse[], use: ColumnUse): string[] =>
  row.cells.filter((_, i) => uses[i] === use).map((cell) => cell.trim());

/** The row of trade/treatments a text names letter by letter; anything else is the person's to choose. */
export const typeNamed = (text: string): string | undefined => byName.get(folded(text));

const byName = new Map(treatments.flatMap(({ id, name }) => [id, name].map((text) => [folded(text), id] as const)));

/** Every row read, in the order of the list. A row that says what one before it says is not taken a second time. */
export const readList = (rows: readonly ListRow[], reading: Reading): readonly RowRead[] => {
  const seen = new Map<string, number>();
  const matching = matchedOnce(reading.works);
  return rows.map((row) => {
    const read = readRow(row, reading, matching);
    if (!read.treatment) return read;
    const name = idOfTreatment(read.treatment);
    const before = seen.get(name);
    if (before === undefined) {
      seen.set(name, row.line);
      return read;
    }
    const { treatment: _, ...rest } = read;
    return { ...rest, problems: [bringReason('bring: row twice', { line: before })] };
  });
};

/** The id of what a row says, the same wherever and however often it is brought in. */
export const idOfTreatment = ({ sculpture, zones, type, date, ...rest }: BroughtTreatment): string => {
  const { product = '', coats = '', by = '', note = '' } = rest;
  return `brought-${fingerprint(JSON.stringify([sculpture, zones.toSorted(), type, date, product, coats, by, note]))}`;
};

/** A list names the same few works and zones again and again: each is looked up once. */
const matchedOnce = (works: readonly WorkHere[]) => {
  const byText = new Map<string, Match<WorkHere>>();
  const byZones = new Map<string, Match<readonly string[]>>();
  return {
    work: (text: string) => once(byText, text, () => matchWork(text, works)),
    zones: (text: string, work: WorkHere) => once(byZones, `${work.thing} ${text}`, () => matchZones(text, work)),
  };
};

const once = <T>(known: Map<string, T>, key: string, find: () => T): T => {
  const before = known.get(key);
  if (before !== undefined) return before;
  const found = find();
  known.set(key, found);
  return found;
};

type Matching = ReturnType<typeof matchedOnce>;

const readRow = (row: ListRow, reading: Reading, matching: Matching): RowRead => {
  const { uses } = reading;
  const cell = (use: ColumnUse) => cellsFor(row, uses, use)[0] ?? '';
  const problems: Reason[] = [];
  const remarks: Reason[] = [];
  const note = cellsFor(row, uses, 'note').filter((text) => text !== '');

  const work = workOf(cell('work'), reading, matching);
  if ('problem' in work) problems.push(work.problem);
  const zones = 'found' in work ? matching.zones(cell('zones'), work.found) : undefined;
  if (zones && 'problem' in zones) problems.push(zones.problem);
  const day = readDay(cell('date'), reading.order, reading.today);
  if (day.problem) problems.push(day.problem);
  if (day.remark) remarks.push(day.remark);
  const type = typeOf(cell('type'), reading);
  if (typeof type !== 'string') problems.push(type);
  const coats = coatsOf(cell('coats'));
  if (cell('coats') !== '' && coats === undefined) {
    remarks.push(bringReason('bring: coats not read', { text: cell('coats') }));
    note.push(cell('coats'));
  }
  const said = { product: cell('product'), by: cell('by'), note: note.join('\n') };
  for (const column of ['product', 'by', 'note'] as const)
    if (said[column].length > longest[column])
      problems.push(bringReason('bring: text too long', { column, most: longest[column] }));

  const { line, cells } = row;
  if (
    problems.length > 0 ||
    typeof type !== 'string' ||
    !('found' in work) ||
    !zones ||
    !('found' in zones) ||
    !day.date
  )
    return { line, cells, problems, remarks };
  const given = Object.fromEntries(Object.entries(said).filter(([, text]) => text !== ''));
  const counted = coats === undefined ? {} : { coats };
  const treatment = { sculpture: work.found.thing, zones: zones.found, type, date: day.date, ...given, ...counted };
  return { line, cells, treatment, problems, remarks };
};

const workOf = (text: string, { uses, works, workForAll, workFor }: Reading, matching: Matching) => {
  const chosen = uses.includes('work') ? workFor[folded(text)] : workForAll;
  const found = works.find(({ thing }) => thing === chosen);
  if (found) return { found };
  return uses.includes('work') ? matching.work(text) : { problem: bringReason('bring: work missing', {}) };
};

const typeOf = (text: string, { uses, typeForAll, typeFor }: Reading): string | Reason => {
  if (!uses.includes('type')) return typeForAll || bringReason('bring: sort missing', {});
  if (text === '') return typeForAll || bringReason('bring: sort missing', {});
  return typeFor[folded(text)] || typeNamed(text) || bringReason('bring: sort not chosen', { text });
};

const coatsOf = (text: string): number | undefined => {
  const found = /^(\d{1,2})\s*(?:x|coats?)?$/i.exec(text);
  const coats = Number(found?.[1]);
  return coats >= 1 && coats <= mostCoats ? coats : undefined;
};
