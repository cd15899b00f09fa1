import { plainFigures } from './plainFigures';

/** The mark that parts tenths from ones in the language of the person. */
export type DecimalMark = '.' | ',';

export interface NumberRead {
  readonly value: number;
  /** What somebody used to the other mark would mean by the same text, a thousandfold off: to be told, never passed over. */
  readonly other?: number;
  /** Typed as a fraction: "3 1/2". */
  readonly fraction?: true;
}

/** A whole number of more figures than the computer holds without loss is none a person measures. */
const mostFigures = 15;

/**
 * A number as a person types it, below nought too. Either mark parts the decimals where it cannot be misread ("1,5", "1.5", "0.500"),
 * thousands may stand in groups of three, parted by one and the same space, apostrophe, point or comma. One mark with just three figures
 * after it and one to three before ("1.500") is read in the way of the language, and `other` then holds the other way. Undefined: no number.
 */
export const readNumber = (text: string, decimal: DecimalMark): NumberRead | undefined => {
  const signed = /^([-+]?) ?(.*)$/.exec(plainFigures(text));
  const read = signed?.[2] === undefined ? undefined : (fractionOf(signed[2]) ?? unsigned(signed[2], decimal));
  if (!read || signed?.[1] !== '-') return read;
  // Nought is nought, without a sign.
  return {
    ...read,
    value: 0 - read.value,
    ...(read.other === undefined ? {} : { other: 0 - read.other }),
  };
};

const unsigned = (text: string, decimal: DecimalMark): NumberRead | undefined => {
  const cut = Math.max(text.lastIndexOf('.'), text.lastIndexOf(','));
  const [left, right] = [text.slice(0, Math.max(cut, 0)), text.slice(cut + 1)];
  // No mark, or the same twice: no decimals.
  if (cut < 0 || left.includes(text.charAt(cut))) {
    const whole = withoutGroups(text);
    return whole === undefined ? undefined : { value: Number(whole) };
  }
  const whole = left === '' ? '0' : withoutGroups(left);
  if (whole === undefined || !/^\d+$/.test(right)) return undefined;
  const parted = Number(`${whole}.${right}`);
  if (right.length !== 3 || !/^[1-9]\d{0,2}$/.test(left)) return { value: parted };
  const thousands = Number(left + right);
  return text.charAt(cut) === decimal ? { value: parted, other: thousands } : { value: thousands, other: parted };
};

/** Figures alone, of figures in groups of three or in none; undefined where the groups are not whole. */
const withoutGroups = (text: string): string | undefined => {
  if (!/^\d+$|^[1-9]\d{0,2}([ ',.])\d{3}(?:\1\d{3})*$/.test(text)) return undefined;
  const figures = text.replace(/\D/g, '');
  return figures.length > mostFigures ? undefined : figures;
};

/** "1/2", "3 1/2", "3-1/2"; the part is less than one. */
const fractionOf = (text: string): NumberRead | undefined => {
  const found = /^(?:(\d{1,6})[ -])?(\d{1,2})\/(\d{1,3})$/.exec(text);
  if (!found) return undefined;
  const [whole, over, under] = [Number(found[1] ?? 0), Number(found[2]), Number(found[3])];
  return over < under ? { value: whole + over / under, fraction: true } : undefined;
};
