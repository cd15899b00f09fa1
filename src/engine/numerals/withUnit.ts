import { plainFigures } from './plainFigures';
import { type DecimalMark, type NumberRead, readNumber } from './readNumber';

/** A number and what is typed after it: "12 cm" as "12" and "cm", folded to small letters without spaces and points. */
export const splitUnit = (text: string): { readonly number: string; readonly unit: string } | undefined => {
  const found = /^([-+]?[\d., '/-]*\d)(?!\d) ?([^\d ].*)?$/.exec(plainFigures(text));
  if (found?.[1] === undefined) return undefined;
  return { number: found[1], unit: folded(found[2] ?? '') };
};

const folded = (unit: string): string =>
  unit
    .toLowerCase()
    .replace(/[ .°º^]/g, '')
    .replace(/²/g, '2');

/** Twelve to the foot: the inches of a length in feet and inches are fewer. */
const inchesInFoot = 12;

/** A length in feet and inches, in feet: 5' 6 1/2", 5'6, 5 ft 6 in, 5-1/2 ft. The inches are under twelve. */
export const readFeetAndInches = (text: string, decimal: DecimalMark): NumberRead | undefined => {
  const found = /^(\d+) ?(?:'|ft\.?|feet|foot|fuß) ?-? ?(.+?) ?(?:"|in\.?|inch|inches|zoll)?$/i.exec(
    plainFigures(text),
  );
  if (found?.[1] === undefined || found[2] === undefined) return undefined;
  const inches = readNumber(found[2], decimal);
  if (!inches || inches.other !== undefined || inches.value < 0 || inches.value >= inchesInFoot) return undefined;
  return { value: Number(found[1]) + inches.value / inchesInFoot, fraction: true };
};
