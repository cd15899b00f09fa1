import type { ReactNode } from 'react';

interface RowsTableProps {
  readonly caption?: string;
  readonly heads: readonly string[];
  /** First cell heads the row. */
  readonly rows: readonly { readonly key: string; readonly cells: readonly ReactNode[] }[];
  /** Columns that hold figures, counted from 0. */
  readonly figures?: readonly number[];
}

/** Rows the engine uses, as they are. */
export function RowsTable({ caption, heads, rows, figures = [] }: RowsTableProps) {
  const look = (i: number) => (figures.includes(i) ? 'of-number' : undefined);
  return (
    <table className="plain-table cards">
      {caption && <caption>{caption}</caption>}
      <thead>
        <tr>
          {heads.map((head, i) => (
            <th scope="col" key={head} className={look(i)}>
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ key, cells: [first, ...rest] }) => (
          <tr key={key}>
            <th scope="row">{first}</th>
            {rest.map((cell, i) => (
              <td key={heads[i + 1]} data-head={heads[i + 1]} className={look(i + 1)}>
                {cell}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
