import type { SculptureRow } from '../../actions';

export interface WorkNamed {
  readonly thing: string;
  readonly name: string;
}

/** Works by number, as they are called in a list. */
export const worksNamed = (rows: readonly SculptureRow[]): readonly WorkNamed[] =>
  rows
    .map(({ thing, body }) => ({ thing, name: `${body.number} ${body.title}`.trim() }))
    .sort((a, b) => a.name.localeCompare(b.name, 'en', { numeric: true }));
