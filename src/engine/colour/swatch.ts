import { clampRgb, converter, displayable, formatHex, modeLab, modeLab65, modeRgb, useMode } from 'culori/fn';
import type { BodyOf } from '../record';
import type { Lab } from './lab';

const onScreen = () => {
  useMode(modeRgb);
  useMode(modeLab65);
  // D50: adapted to the screen's D65 after Bradford.
  useMode(modeLab);
  return converter('rgb');
};
let made: ReturnType<typeof onScreen> | undefined;

/**
 * How a reading looks on an sRGB screen: #rrggbb, and whether a screen can show it at all (`exact` false: the nearest it can). Only
 * D50 is adapted; under C and A white is taken for the screen's white. To be looked at, never measured or matched.
 */
export const swatchOf = (
  { L, a, b }: Lab,
  illuminant: BodyOf<'reading'>['illuminant'],
): { readonly hex: string; readonly exact: boolean } => {
  made ??= onScreen();
  const rgb = made({ mode: illuminant === 'D50' ? 'lab' : 'lab65', l: L, a, b });
  return { hex: formatHex(clampRgb(rgb)), exact: displayable(rgb) };
};
