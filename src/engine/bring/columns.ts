import { folded } from './folded';

/** What a column of the list is taken for. `note`: its text goes into the note. `leave`: it stays out. */
export const columnUses = ['work', 'zones', 'date', 'type', 'product', 'coats', 'by', 'note', 'leave'] as const;
export type ColumnUse = (typeof columnUses)[number];

/** Words people write above such columns: common practice, no source. */
const headings: Readonly<Record<Exclude<ColumnUse, 'leave'>, readonly string[]>> = {
  work: ['work', 'sculpture', 'object', 'artwork', 'title', 'number', 'no', 'inventory', 'inv', 'piece', 'statue'],
  zones: ['zone', 'zones', 'part', 'parts', 'area', 'where'],
  date: ['date', 'day', 'when', 'year', 'done', 'waxed'],
  type: ['type', 'treatment', 'what', 'sort', 'kind', 'action', 'method'],
  product: ['product', 'material', 'wax', 'brand', 'with'],
  coats: ['coats', 'coat', 'layers'],
  by: ['by', 'who', 'person', 'conservator', 'contractor', 'name'],
  note: ['note', 'notes', 'remark', 'remarks', 'comment', 'comments'],
};

const once: readonly ColumnUse[] = ['work', 'zones', 'date', 'type', 'product', 'coats', 'by'];

/** A use for each column by its heading; a column whose heading says nothing goes into the note, so that nothing is lost unseen. */
export const proposedUses = (heads: readonly string[]): readonly ColumnUse[] => {
  const taken = new Set<ColumnUse>();
  return heads.map((head) => {
    const words = folded(head).split(/[^\p{L}\p{N}]+/u);
    const use = columnUses.find(
      (u) => u !== 'leave' && !(once.includes(u) && taken.has(u)) && headings[u].some((word) => words.includes(word)),
    );
    if (use) taken.add(use);
    return use ?? 'note';
  });
};

/** Whether a first row names the columns: two of its cells are known headings, or the only ones. */
export const namesColumns = (cells: readonly string[]): boolean => {
  const uses = proposedUses(cells).filter((use, i) => use !== 'note' || headings.note.includes(folded(cells[i] ?? '')));
  return uses.length >= Math.min(2, cells.length);
};
