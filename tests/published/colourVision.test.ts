import { readFileSync } from 'node:fs';
import { filterDeficiencyDeuter, filterDeficiencyProt, filterDeficiencyTrit, formatHex, parse } from 'culori';
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { ciede2000, labOfRgb } from '../../src/engine/colour';
import { hatches, inkAt, type Mark } from '../../src/engine/photo';
import type { IndexLevel } from '../../src/screens/parts';
import { Pattern } from '../../src/screens/parts/Pattern';
import { linear, luminance, rgbOf, themes } from '../files/colourTokens';

/**
 * G. M. Machado, M. M. Oliveira, L. A. F. Fernandes: A Physiologically-based Model for Simulation of Color Vision Deficiency, IEEE
 * Transactions on Visualization and Computer Graphics 15(6), 1291-1298, 2009, doi 10.1109/TVCG.2009.113; the authors' table for
 * severity 1.0, rows for red, green and blue. Used on linear light.
 */
const machado = {
  protanopia: [0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998],
  deuteranopia: [0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.01182, 0.04294, 0.968881],
  tritanopia: [1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.3039],
} as const;
type Deficiency = keyof typeof machado;

const through = (matrix: readonly number[], rgb: readonly number[]): number[] =>
  [0, 3, 6].map((row) => rgb.reduce((sum, c, i) => sum + (matrix[row + i] ?? 0) * c, 0));
const gamma = (c: number): number => {
  const held = Math.min(1, Math.max(0, c));
  return held <= 0.0031308 ? held * 12.92 : 1.055 * held ** (1 / 2.4) - 0.055;
};
const lab = (rgb: readonly number[]) => labOfRgb(...(rgb.map((c) => c * 255) as [number, number, number]));

const eyes = {
  'common sight': (hex: string) => lab(rgbOf(hex)),
  ...Object.fromEntries(
    Object.entries(machado).map(([name, matrix]) => [
      name,
      (hex: string) => lab(through(matrix, rgbOf(hex).map(linear)).map(gamma)),
    ]),
  ),
  'grey print': (hex: string) => {
    const grey = gamma(luminance(hex));
    return lab([grey, grey, grey]);
  },
} as Record<'common sight' | Deficiency | 'grey print', (hex: string) => ReturnType<typeof lab>>;

/** A just noticeable difference is about 1; two fields apart on a picture are told from each other with ease from 10 on (common practice, no source). */
const withEase = 10;
const steps = [1, 2, 3, 4, 5].map((n) => themes.light[`index-${n}`] ?? '');
const pairs = <T>(all: readonly T[]): (readonly [T, T])[] =>
  all.flatMap((one, i) => all.slice(i + 1).map((other) => [one, other] as const));

it.each([
  ['protanopia', filterDeficiencyProt],
  ['deuteranopia', filterDeficiencyDeuter],
  ['tritanopia', filterDeficiencyTrit],
] as const)('the matrix of %s is the one a library has copied from the same table', (name, filter) => {
  for (const hex of [...steps, '#804020', '#30a060', '#2050a0']) {
    const [r = 0, g = 0, b = 0] = through(machado[name], rgbOf(hex));
    expect(formatHex({ mode: 'rgb', r, g, b })).toBe(formatHex(filter(1)(parse(hex)!)));
  }
});

describe.each(Object.entries(eyes))('Seen with %s', (_, seen) => {
  it('any two steps of the index scale are told apart with ease', () => {
    const apart = pairs(steps).map(([one, other]) => ciede2000(seen(one), seen(other)));
    expect(Math.min(...apart)).toBeGreaterThanOrEqual(withEase);
  });

  it('each step is darker than the one before', () => {
    const L = steps.map((step) => seen(step).L);
    expect(L).toEqual([...L].sort((a, b) => b - a));
  });

  it('danger, caution and the accent are told from the paper they stand on', () => {
    for (const theme of Object.values(themes))
      for (const name of ['danger', 'caution', 'accent'])
        expect(ciede2000(seen(theme[name] ?? ''), seen(theme.paper ?? ''))).toBeGreaterThanOrEqual(4 * withEase);
  });
});

/** Ink of a swatch as black on white, 0 to 1 at each pixel, without its edge. */
async function inkOf(level: IndexLevel): Promise<Float64Array> {
  const css = readFileSync('src/screens/parts/pattern.css', 'utf8');
  const width = /\.level-line \{[^}]*stroke-width: ([\d.]+);/.exec(css)?.[1];
  const style = `.level-ground,.swatch-edge{stroke:none}.level-ground{fill:#fff}.level-dot{fill:#000}.level-line{fill:none;stroke:#000;stroke-width:${width}}`;
  const svg = renderToStaticMarkup(createElement(Pattern, { level }))
    .replace('<svg ', '<svg xmlns="http://www.w3.org/2000/svg" ')
    .replace('<defs>', `<style>${style}</style><defs>`);
  const { data, info } = await sharp(Buffer.from(svg), { density: 288 })
    .flatten({ background: '#fff' })
    .extract({ left: 16, top: 16, width: 80, height: 80 })
    .greyscale()
    .raw()
    .toBuffer({ resolveWithObject: true });
  expect(info.width).toBe(80);
  return Float64Array.from(data, (grey) => 1 - grey / 255);
}

describe('With no colour at all', () => {
  it('each step of the index has another hatch, with more ink the worse it is', async () => {
    const inks = await Promise.all(([1, 2, 3, 4, 5] as const).map(inkOf));
    const shares = inks.map((ink) => ink.reduce((sum, one) => sum + one, 0) / ink.length);
    expect(shares[0]).toBeCloseTo(0, 3);
    const more = shares.slice(1).map((share, i) => share - (shares[i] ?? 0));
    expect(Math.min(...more), shares.map((share) => share.toFixed(3)).join(' ')).toBeGreaterThan(0.03);
  });

  it('what is marked on a photo is told apart by its hatch alone', () => {
    const drawn = (mark: Mark) =>
      Array.from({ length: 84 * 60 }, (_, i) => inkAt(hatches[mark], i % 84, Math.floor(i / 84)));
    const marks = Object.keys(hatches) as Mark[];
    expect(new Set(marks.map((mark) => hatches[mark].lines)).size).toBe(marks.length);
    for (const [one, other] of pairs(marks)) {
      const [a, b] = [drawn(one), drawn(other)];
      const differ = a.filter((ink, i) => (ink === 'pale') !== (b[i] === 'pale')).length;
      const inked = a.filter((ink, i) => ink === 'pale' || b[i] === 'pale').length;
      expect(differ / inked, `${one} and ${other}`).toBeGreaterThan(0.6);
    }
  });
});
