import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

/** What DEVELOPERS.md says of the visual language, held against the style files. */
const styles = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.css'))
  .map((file) => ({ file, css: readFileSync(join('src', file), 'utf8').replaceAll(/\/\*[\s\S]*?\*\//g, '') }));

const tokens = 'screens/shell/tokens.css';
/** The one layout of all papers: text and space of its own, measured on a sheet. */
const layout = ['sheet', 'pages', 'sorts'].map((part) => `papers/layout/${part}.css`);
/** Printed whatever the theme: black, white and greys that a copier keeps. */
const onPaper = ['papers/layout/sheet.css', 'papers/layout/sorts.css', 'screens/stations/cards.css'];
/** Text inside a drawing: its sizes are units of the drawing, which is scaled as a whole. */
const inDrawings = [
  'screens/stations/cards.css',
  'screens/year/year.css',
  'screens/compare/compare.css',
  'screens/eye-check/eyeCheck.css',
  'screens/parts/dial.css',
  'screens/parts/charts/charts.css',
];
/** Points, for what is only ever seen on paper. */
const inPoints = ['screens/stations/cards.css', 'screens/year/year.css'];

const linesWith = (pattern: RegExp, but: readonly string[]): string[] =>
  styles
    .filter(({ file }) => !but.includes(file))
    .flatMap(({ file, css }) =>
      css
        .split('\n')
        .filter((line) => pattern.test(line))
        .map((line) => `${file}: ${line.trim()}`),
    );

test('a colour is named once, in tokens.css, so that a theme can change it and its contrast is counted', () => {
  const named = 'white|black|red|green|blue|gr[ae]y|yellow|orange|brown|silver|maroon|navy|teal|purple';
  const raw = new RegExp(`#[0-9a-f]{3,8}\\b|\\b(?:rgba?|hsla?|oklch|lab|lch)\\(|:\\s*(?:${named})\\b`, 'i');
  expect(linesWith(raw, [tokens, ...onPaper])).toEqual([]);
});

test('a size of text is one of the scale in tokens.css, but inside drawings and on paper', () => {
  const sizes = linesWith(/font-size:|\bfont:(?!\s*inherit)/, [tokens, ...layout]);
  const fits = (line: string): boolean => {
    const file = line.slice(0, line.indexOf(':'));
    if (/font-size:\s*var\(--text[\w-]*\)/.test(line)) return true;
    if (/font-size:\s*[\d.]+px/.test(line)) return inDrawings.includes(file);
    return /font-size:\s*[\d.]+pt/.test(line) && inPoints.includes(file);
  };
  expect(sizes.filter((line) => !fits(line))).toEqual([]);
});

test('every exception is still one', () => {
  const of = (file: string) => styles.find((one) => one.file === file)?.css ?? '';
  expect(inDrawings.filter((file) => !/font-size:\s*[\d.]+px/.test(of(file)))).toEqual([]);
  expect(inPoints.filter((file) => !/font-size:\s*[\d.]+pt/.test(of(file)))).toEqual([]);
  expect(onPaper.filter((file) => !/#[0-9a-f]{3}/.test(of(file)))).toEqual([]);
});

test('a token that is used is there, and one that is there is used', () => {
  const all = styles.map(({ css }) => css).join('\n');
  const said = new Set([...all.matchAll(/(--[\w-]+)\s*:/g)].map(([, name]) => name));
  const used = new Set([...all.matchAll(/var\((--[\w-]+)/g)].map(([, name]) => name));
  const ofTokens = styles.find(({ file }) => file === tokens)?.css ?? '';
  const inCode = readdirSync('src', { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.tsx?$/.test(file))
    .map((file) => readFileSync(join('src', file), 'utf8'))
    .join('\n');
  expect([...used].filter((name) => !said.has(name) && !inCode.includes(`${name}`))).toEqual([]);
  const here = [...ofTokens.matchAll(/(--[\w-]+)\s*:/g)].map(([, name]) => name ?? '');
  expect([...new Set(here)].filter((name) => !used.has(name) && !inCode.includes(name))).toEqual([]);
});

test('space between things comes in steps of two pixels, and corners are rounded by a token', () => {
  const off = linesWith(/^\s*(?:padding|gap|row-gap|column-gap|margin)[\w-]*:/, layout).filter((line) =>
    [...line.matchAll(/(-?[\d.]+)rem/g)].some(([, rem]) => !Number.isInteger(Number(rem) * 8)),
  );
  expect(off).toEqual([]);
  expect(linesWith(/border-radius:(?!\s*(?:var\(--radius|50%|0;|inherit))/, [...layout, tokens])).toEqual([]);
});

test('icons share one grid and one stroke', () => {
  const icons = readFileSync('src/screens/parts/icons.tsx', 'utf8');
  expect([...icons.matchAll(/strokeWidth="([^"]*)"/g)].map(([, width]) => width)).toEqual(['2']);
  expect([...icons.matchAll(/viewBox="([^"]*)"/g)].map(([, box]) => box)).toEqual(['0 0 24 24']);
  const starts = [...icons.matchAll(/M\s?([\d.]+)[ ,]([\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
  expect(starts.length).toBeGreaterThan(30);
  expect(starts.filter((at) => at.some((v) => v < 2 || v > 22))).toEqual([]);
  const elsewhere = readdirSync('src/screens', { recursive: true, encoding: 'utf8' }).filter(
    (file) =>
      file.endsWith('.tsx') &&
      file !== join('parts', 'icons.tsx') &&
      readFileSync(join('src/screens', file), 'utf8').includes('className="icon"'),
  );
  expect(elsewhere).toEqual([]);
});
