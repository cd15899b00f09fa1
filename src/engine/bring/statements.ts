import { fingerprint } from './fingerprint';

/** One line of an earlier report, as it is taken over: a thought of its author, never a finding. */
export interface BroughtStatement {
  readonly sculpture: string;
  readonly about?: string;
  readonly statement: string;
  readonly by: string;
  /** As vague as it is known. */
  readonly date: string;
  readonly source: string;
}

/** Marks people put before the lines of a list: common practice, no source. */
const mark = /^\s*(?:[-*\u2022\u2013\u2014]|\(?\d{1,3}[.)])\s+/;

/** The statements of a pasted text, one a line; blank lines and marks of lists fall away, a statement said twice stands once. */
export const statementsIn = (text: string): readonly string[] => [
  ...new Set(
    text
      .split(/\r\n|\r|\n/)
      .map((line) => line.replace(mark, '').trim())
      .filter((line) => line !== ''),
  ),
];

/** The same wherever and however often the report is brought in. */
export const idOfStatement = ({ sculpture, about = '', statement, by, date, source }: BroughtStatement): string =>
  `brought-${fingerprint(JSON.stringify([sculpture, about, statement, by, date, source]))}`;
