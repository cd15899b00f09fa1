import { useMemo, useState } from 'react';
import { type Encoding, listText } from '../../actions';
import {
  bringReason,
  type ColumnUse,
  cellsFor,
  type DayOrder,
  folded,
  type ListRow,
  matchWork,
  namesColumns,
  needsOrder,
  orderOf,
  proposedUses,
  readList,
  splitRows,
  typeNamed,
  type WorkHere,
} from '../../engine/bring';
import { sayReason } from '../../words';
import { useDesk } from '../shell';

/** A list opened, before anybody has said how it is to be read. */
export interface OpenList {
  readonly name: string;
  readonly encoding: Encoding;
  readonly rows: readonly ListRow[];
}

/** Shown row by row and taken in one deed; longer lists come in parts. */
const mostRows = 2000;
const longestName = 300;

/** What the person has said of how the list is to be read. */
export interface Said {
  readonly heads: boolean;
  readonly uses: readonly ColumnUse[];
  readonly order?: DayOrder | undefined;
  readonly workForAll: string;
  readonly typeForAll: string;
  readonly workFor: Readonly<Record<string, string>>;
  readonly typeFor: Readonly<Record<string, string>>;
  readonly source: string;
}

/** A list being read: opened, its columns said, its rows understood or not. */
export const useList = (works: readonly WorkHere[]) => {
  const desk = useDesk();
  const [list, setList] = useState<OpenList>();
  const [said, setSaid] = useState<Said>();
  const [problem, setProblem] = useState<string>();
  const open = async (file: File) => {
    const read = await listText(file);
    const parted = read.ok ? splitRows(read.text) : undefined;
    const refused = !read.ok ? read.reason : parted && wrongWith(parted);
    setList(undefined);
    setProblem(refused && sayReason(refused));
    if (!read.ok || !parted || refused) return;
    const name = file.name.normalize('NFC').slice(0, longestName);
    setList({ name, encoding: read.encoding, rows: parted.rows });
    setSaid(firstReading(name, parted.rows, works));
  };
  const change = (more: Partial<Said>) => setSaid((before) => before && { ...before, ...more });
  const today = desk.today();
  // Where it comes from changes no row: typing it reads nothing anew.
  const { heads, uses, order, workForAll, typeForAll, workFor, typeFor } = said ?? {};
  const read = useMemo(() => {
    if (!list || heads === undefined || !uses || !workFor || !typeFor) return undefined;
    const how = { heads, uses, order, workForAll: workForAll ?? '', typeForAll: typeForAll ?? '', workFor, typeFor };
    return understood(list, how, works, today);
  }, [list, heads, uses, order, workForAll, typeForAll, workFor, typeFor, works, today]);
  return { list, said, read, problem, open, change, close: () => setList(undefined) } as const;
};

const wrongWith = ({ rows, unclosed }: ReturnType<typeof splitRows>) => {
  if (unclosed !== undefined) return bringReason('bring: quote not closed', { line: unclosed });
  if (rows.length === 0) return bringReason('bring: empty list', {});
  return rows.length > mostRows
    ? bringReason('bring: list too long', { rows: rows.length, most: mostRows })
    : undefined;
};

const widthOf = (rows: readonly ListRow[]): number => rows.reduce((most, { cells }) => Math.max(most, cells.length), 0);

const firstReading = (name: string, rows: readonly ListRow[], works: readonly WorkHere[]): Said => {
  const first = rows[0]?.cells ?? [];
  const width = widthOf(rows);
  const filled = Array.from({ length: width }, (_, i) => first[i] ?? '');
  const heads = namesColumns(first);
  return {
    heads,
    uses: heads ? proposedUses(filled) : filled.map(() => 'note'),
    workForAll: works.length === 1 ? (works[0]?.thing ?? '') : '',
    typeForAll: '',
    workFor: {},
    typeFor: {},
    source: name,
  };
};

const distinct = (texts: readonly string[]): readonly string[] => {
  const byFolded = new Map<string, string>();
  for (const text of texts) if (!byFolded.has(folded(text))) byFolded.set(folded(text), text.trim());
  return [...byFolded.values()];
};

/** Every row as it is understood, and what has to be asked for that. */
const understood = ({ rows }: OpenList, said: Omit<Said, 'source'>, works: readonly WorkHere[], today: string) => {
  const body = said.heads ? rows.slice(1) : rows;
  const { uses } = said;
  const ofUse = (use: ColumnUse) => body.flatMap((row) => cellsFor(row, uses, use).slice(0, 1));
  const dates = ofUse('date');
  const order = said.order ?? orderOf(dates);
  return {
    rows: readList(body, { ...said, works, order, today }),
    width: widthOf(rows),
    heads: said.heads ? (rows[0]?.cells ?? []) : [],
    firsts: body[0]?.cells ?? [],
    order,
    /** A day that means two, where the list itself does not tell. */
    asksOrder: needsOrder(dates) ? dates.find((text) => needsOrder([text])) : undefined,
    asksWorks: distinct(ofUse('work')).filter((text) => text !== '' && 'problem' in matchWork(text, works)),
    asksTypes: distinct(ofUse('type')).filter((text) => text !== '' && !typeNamed(text)),
    typesMissing: !uses.includes('type') || ofUse('type').some((text) => text === ''),
  };
};

export type Understood = ReturnType<typeof understood>;
