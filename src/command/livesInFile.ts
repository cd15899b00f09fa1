import '../words/pastStart';
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

/** Times no unit of a table of lives would come to; nearer to the ends of what a computer can hold, sums run over. */
const [shortest, longest] = [1e-30, 1e30];

const no = (problem: string): Read => ({ ok: false, problem });
const named = (names: readonly string[]): string => names.map((name) => `“${name.slice(0, 40)}”`).join(', ');

/**
 * Lives of any origin from a table with the columns lower, upper and, if wanted, group: an empty lower end or 0 is left-censored, an
 * empty upper end right-censored, equal ends exact. What is wrong is said with its line.
 */
export const livesIn = (bytes: Uint8Array): Read => {
  const { data, meta, errors } = Papa.parse<string[]>(new TextDecoder().decode(bytes), { skipEmptyLines: false });
  const [head = [], ...lines] = data;
  const names = head.map((name) => name.trim().toLowerCase());
  const faulty = faultOfHead(names);
  if (faulty) return no(faulty);
  const open = errors.find(({ type }) => type === 'Quotes');
  if (open)
    return no(
      `Line ${(open.row ?? 0) + 1}: a quotation mark is opened and never closed as it should. Take it out or close it.`,
    );
  const rows: Row[] = [];
  for (const [i, line] of lines.entries()) {
    if (line.every((cell) => cell.trim() === '')) continue;
    const row = rowOf(line, names, meta.delimiter === ';');
    if (typeof row === 'string') return no(`Line ${i + 2}: ${row}`);
    rows.push(row);
  }
  if (rows.length === 0) return no('The file has no row under its first line. Write one interval to a line.');
  const unknown = names.filter((name) => !(columns as readonly string[]).includes(name));
  return {
    ok: true,
    rows,
    notes: unknown.length > 0 ? [`Not read: ${named(unknown)}. Only lower, upper and group are.`] : [],
  };
};

const faultOfHead = (names: readonly string[]): string | undefined => {
  const missing = columns.slice(0, 2).filter((name) => !names.includes(name));
  if (missing.length > 0) {
    const said = names.join('') === '' ? ' It is empty.' : ` Its first line names ${named(names.slice(0, 8))}.`;
    return `The file has no column ${missing.map((name) => `“${name}”`).join(' and no column ')}.${said} Write a first line: lower,upper or lower,upper,group.`;
  }
  const twice = columns.find((name) => names.indexOf(name) !== names.lastIndexOf(name));
  return twice && `The first line names “${twice}” twice. Leave one of the two columns out.`;
};

const rowOf = (line: readonly string[], names: readonly string[], decimalComma: boolean): Row | string => {
  if (line.slice(names.length).some((cell) => cell.trim() !== ''))
    return `there are ${line.length} cells under ${names.length} columns. Write decimals with a point, or put semicolons between the columns.`;
  const cell = (name: string): string => (line[names.indexOf(name)] ?? '').trim();
  const number = (text: string): number => Number(decimalComma ? text.replace(',', '.') : text);
  const [lower, upper] = [cell('lower'), cell('upper')];
  for (const [name, text] of [
    ['lower', lower],
    ['upper', upper],
  ] as const) {
    if (decimalComma && /^[1-9]\d{0,2}\.\d{3}$/.test(text))
      return `the ${name} end “${text}” can be read two ways. Write thousands without a mark, and decimals with a comma.`;
    const time = number(text);
    if (text !== '' && !Number.isFinite(time))
      return `the ${name} end “${text}” is no number. Write a number, or leave it empty.`;
    if (time < 0) return `the ${name} end ${text} is under 0. Times run from the start, at 0.`;
    if (time > longest || (time > 0 && time < shortest))
      return `the ${name} end ${text} is beyond what can be worked with. Tell all times in another unit.`;
  }
  const ends = {
    lower: lower === '' ? 0 : number(lower),
    upper: upper === '' ? Number.POSITIVE_INFINITY : number(upper),
  };
  if (ends.lower > ends.upper) return `the lower end ${lower} is over the upper end ${upper}. Exchange them.`;
  if (ends.upper === 0)
    return 'both ends are 0, and a life of no length tells nothing. Leave the line out, or put the time of the first look as the upper end.';
  return { ...ends, group: names.includes('group') ? cell('group') : '' };
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
