import Papa from 'papaparse';
import { type Interval, type Limited, turnbull, weibull } from '../engine/life';
import { sayReason } from '../words';

interface Row extends Interval {
  readonly group: string;
}

type Read =
  | { readonly ok: true; readonly rows: readonly Row[]; readonly notes: readonly string[] }
  | { readonly ok: false; readonly problem: string };

const columns = ['lower', 'upper', 'group'] as const;

/**
 * Lives of any origin from a table with the columns lower, upper and, if wanted, group: an empty lower end or 0 is left-censored, an
 * empty upper end right-censored, equal ends exact. What is wrong is said with its line.
 */
export const livesIn = (bytes: Uint8Array): Read => {
  const { data, meta } = Papa.parse<string[]>(new TextDecoder().decode(bytes), { skipEmptyLines: false });
  const [head = [], ...lines] = data;
  const names = head.map((name) => name.trim().toLowerCase());
  const missing = columns.slice(0, 2).filter((name) => !names.includes(name));
  if (missing.length > 0) {
    const said =
      head.length > 0 && head.join('').trim()
        ? ` Its first line names ${head.map((n) => `“${n.trim()}”`).join(', ')}.`
        : ' It is empty.';
    return {
      ok: false,
      problem: `The file has no column ${missing.map((name) => `“${name}”`).join(' and no column ')}.${said} Write a first line: lower,upper or lower,upper,group.`,
    };
  }
  const unknown = names.filter((name) => !(columns as readonly string[]).includes(name));
  const rows: Row[] = [];
  for (const [i, line] of lines.entries()) {
    if (line.every((cell) => cell.trim() === '')) continue;
    const cell = (name: string): string => (line[names.indexOf(name)] ?? '').trim();
    const row = rowOf(cell('lower'), cell('upper'), meta.delimiter === ';');
    if (typeof row === 'string') return { ok: false, problem: `Line ${i + 2}: ${row}` };
    rows.push({ ...row, group: names.includes('group') ? cell('group') : '' });
  }
  if (rows.length === 0)
    return { ok: false, problem: 'The file has no row under its first line. Write one interval to a line.' };
  const notes =
    unknown.length > 0
      ? [`Not read: ${unknown.map((name) => `“${name}”`).join(', ')}. Only lower, upper and group are.`]
      : [];
  return { ok: true, rows, notes };
};

const rowOf = (lower: string, upper: string, decimalComma: boolean): Interval | string => {
  const number = (cell: string): number => Number(decimalComma ? cell.replace(',', '.') : cell);
  for (const [name, cell] of [
    ['lower', lower],
    ['upper', upper],
  ] as const) {
    if (cell !== '' && !Number.isFinite(number(cell)))
      return `the ${name} end “${cell}” is no number. Write a number, or leave it empty.`;
    if (number(cell) < 0) return `the ${name} end ${cell} is under 0. Times run from the start, at 0.`;
  }
  const ends = {
    lower: lower === '' ? 0 : number(lower),
    upper: upper === '' ? Number.POSITIVE_INFINITY : number(upper),
  };
  if (ends.lower > ends.upper) return `the lower end ${lower} is over the upper end ${upper}. Exchange them.`;
  if (ends.upper === 0)
    return 'both ends are 0, and a life of no length tells nothing. Leave the line out, or put the time of the first look as the upper end.';
  return ends;
};

/** For each group, in the order they come: the steps and the curve, or why there is no curve. Numbers no file can hold are null. */
export const livesByGroup = (rows: readonly Row[]) => ({
  groups: [...new Set(rows.map(({ group }) => group))].map((group) => {
    const own = rows.filter((row) => row.group === group);
    const fit = weibull(own);
    const steps = turnbull(own).masses.map(({ left, right, mass }) => ({
      left,
      right: Number.isFinite(right) ? right : null,
      mass,
    }));
    const common = { group, n: own.length, turnbull: steps };
    if (!fit.ok) return { ...common, weibull: null, reason: sayReason(fit.reason) };
    const { shape, scale, median, logLikelihood, reasons } = fit;
    const limited = ({ value, low, high }: Limited) => ({ value, low, high });
    return {
      ...common,
      weibull: { shape: limited(shape), scale: limited(scale), median: limited(median), logLikelihood },
      ...(reasons.length > 0 ? { notes: reasons.map((reason) => sayReason(reason)) } : {}),
    };
  }),
});
