import { readFileSync } from 'node:fs';

export type Tokens = Readonly<Record<string, string>>;

const css = readFileSync('src/screens/shell/tokens.css', 'utf8');

/** The colours of a rule, by name, `#rrggbb`. */
const coloursOf = (theme: string): Tokens => {
  const rule = css.split('}').find((one) => one.split('{')[0]?.includes(`data-theme="${theme}"`)) ?? '';
  return Object.fromEntries(
    [...rule.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6});/g)].map(([, name, value]) => [name ?? '', value ?? '']),
  );
};

const light = coloursOf('light');

/** The sun theme says only what differs. */
export const themes = { light, sun: { ...light, ...coloursOf('sun') } } as const;

/** sRGB, 0 to 1. */
export const rgbOf = (hex: string): readonly [number, number, number] => {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255);
  return [r, g, b];
};

/** 0 to 1. WCAG 2.2, "relative luminance"; the limit of the straight part as in IEC 61966-2-1. */
export const linear = (c: number): number => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4);

/** 0 to 1. WCAG 2.2, "relative luminance". */
export const luminance = (hex: string): number => {
  const [r, g, b] = rgbOf(hex).map(linear) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};

/** 1 to 21. WCAG 2.2, "contrast ratio". */
export const contrast = (one: string, other: string): number => {
  const [dark = 0, bright = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (bright + 0.05) / (dark + 0.05);
};
