/** What rows of the trade are called in another language: by table and by the id of the row, the fields that differ. */
export type NamesOfTrade = Readonly<Record<string, Readonly<Record<string, Readonly<Record<string, unknown>>>>>>;

let names: NamesOfTrade = {};

/** Before any table is read. Names only: ids and figures stay as they are. */
export const speakTrade = (spoken: NamesOfTrade): void => {
  names = spoken;
};

/** The rows of a table, with the names of the language spoken. */
export const named = <T extends readonly { readonly id: string }[]>(table: string, rows: T): T => {
  const own = names[table];
  return own ? (rows.map((row) => ({ ...row, ...own[row.id] })) as unknown as T) : rows;
};

/** The same for a table whose rows stand under their ids. */
export const namedUnder = <T extends Readonly<Record<string, object>>>(table: string, rows: T): T => {
  const own = names[table];
  if (!own) return rows;
  return Object.fromEntries(Object.entries(rows).map(([id, row]) => [id, { ...row, ...own[id] }])) as T;
};
