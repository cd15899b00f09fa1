import { impossibleFigure, type Lab } from '../../engine/colour';
import { numberTyped, readTyped } from '../../words';

export interface TypedPlacings {
  readonly values: readonly Lab[];
  /** Lines, counted from 1, that are no three figures, or hold one no surface has. */
  readonly wrong?: { readonly line: number; readonly why: 'not three' | 'out of range' };
}

/** One figure. No colour has a figure of a thousand: one mark is that of decimals here, whatever the language. */
const figureOf = (text: string): number | undefined => {
  const read = readTyped(text, 'number');
  return read?.other === undefined
    ? read?.shown
    : Math.sign(read.shown) * Math.min(Math.abs(read.shown), Math.abs(read.other));
};

/** Figures of a line, parted by spaces, tabs, semicolons, or commas where these are not decimal commas; names of the figures are passed over. */
const partsOf = (line: string): readonly string[] => {
  const bare = line.replace(/[Lab]\s*\*?\s*[=:]?(?=\s*[-−–+]?[\d.,])/gi, ' ').trim();
  const parts = bare.split(/[\s;]+|,(?=\s)/).filter(Boolean);
  return parts.length === 1 && !bare.includes(' ') && bare.split(',').length === 3 ? bare.split(',') : parts;
};

/** Lines of three figures as a person types or pastes them; empty lines are nothing. */
export const typedPlacings = (text: string): TypedPlacings => {
  const values: Lab[] = [];
  for (const [i, line] of text.split('\n').entries()) {
    if (!line.trim()) continue;
    const parts = partsOf(line);
    const [L, a, b] = parts.map(figureOf);
    if (parts.length !== 3 || L === undefined || a === undefined || b === undefined)
      return { values, wrong: { line: i + 1, why: 'not three' } };
    const value = { L, a, b };
    if (impossibleFigure(value)) return { values, wrong: { line: i + 1, why: 'out of range' } };
    values.push(value);
  }
  return { values };
};

/** As it would be typed. */
export const placingsText = (values: readonly Lab[]): string =>
  values.map(({ L, a, b }) => [L, a, b].map((figure) => numberTyped(figure).replace('-', '−')).join(' ')).join('\n');
