/** One row as it stands in the file. */
export interface ListRow {
  /** Line of the file it begins on, from 1. */
  readonly line: number;
  readonly cells: readonly string[];
}

export type Delimiter = ',' | ';' | '\t' | '|';

export interface Rows {
  /** Rows with at least one cell that is not blank. */
  readonly rows: readonly ListRow[];
  readonly delimiter: Delimiter;
  /** Line of a quotation mark that is never closed. */
  readonly unclosed?: number;
}

const delimiters: readonly Delimiter[] = [',', ';', '\t', '|'];
/** Enough to tell what parts the cells; a list is the same all the way down. */
const looked = 64 * 1024;

/**
 * Parts a text into rows and cells by RFC 4180 (seen), and by what spreadsheets make of it (common practice, no source): lines that end
 * in CR LF, LF or CR, other delimiters, a first line "sep=;". A quotation mark inside a cell that does not begin with one is
 * a character like any other.
 */
export const splitRows = (text: string, given?: Delimiter): Rows => {
  const bare = text.startsWith('\ufeff') ? text.slice(1) : text;
  const said = /^sep=([,;\t|])\r?\n?/i.exec(bare);
  const named = said?.[1] as Delimiter | undefined;
  const rest = said ? bare.slice(said[0].length) : bare;
  const delimiter = given ?? named ?? likeliest(rest.slice(0, looked));
  return { ...parted(rest, delimiter, said ? 2 : 1), delimiter };
};

/** The one that gives most rows the same number of cells, more than one; the comma where none does. */
const likeliest = (text: string): Delimiter => {
  let best: { readonly delimiter: Delimiter; readonly worth: number } = { delimiter: ',', worth: 0 };
  for (const delimiter of delimiters) {
    const { rows } = parted(text, delimiter, 1);
    const times = new Map<number, number>();
    for (const { cells } of rows) times.set(cells.length, (times.get(cells.length) ?? 0) + 1);
    const worth = Math.max(0, ...[...times].map(([cells, n]) => (cells > 1 ? (n / rows.length) * (1 - 1 / cells) : 0)));
    if (worth > best.worth) best = { delimiter, worth };
  }
  return best.delimiter;
};

const parted = (text: string, delimiter: Delimiter, first: number): Omit<Rows, 'delimiter'> => {
  const rows: ListRow[] = [];
  let cells: string[] = [];
  let cell = '';
  let [line, began, opened] = [first, first, first];
  let state: 'start' | 'plain' | 'quoted' | 'closed' = 'start';
  const endCell = () => {
    cells.push(cell);
    cell = '';
    state = 'start';
  };
  const endRow = () => {
    endCell();
    if (cells.some((c) => c.trim() !== '')) rows.push({ line: began, cells });
    cells = [];
    began = line;
  };
  for (let i = 0; i < text.length; i++) {
    const c = text.charAt(i);
    const breaks = c === '\n' || c === '\r';
    if (c === '\n' || (c === '\r' && text[i + 1] !== '\n')) line++;
    if (state === 'quoted') {
      if (c !== '"') cell += c;
      else if (text[i + 1] === '"') {
        cell += '"';
        i++;
      } else state = 'closed';
    } else if (c === delimiter) endCell();
    else if (breaks) {
      if (c === '\r' && text[i + 1] === '\n') {
        i++;
        line++;
      }
      endRow();
    } else if (c === '"' && state === 'start') {
      state = 'quoted';
      opened = line;
    } else {
      cell += c;
      if (state === 'start') state = 'plain';
    }
  }
  const unclosed = (state as string) === 'quoted' ? { unclosed: opened } : {};
  if (cell !== '' || cells.length > 0) endRow();
  return { rows, ...unclosed };
};
