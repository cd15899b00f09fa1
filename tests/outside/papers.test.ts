import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { w } from '../../src/words';
import { openApp } from '../browser/app';
import { startTablet, type Tablet } from '../browser/chromium';
import { chooseSheet, printed, type SheetSize, saidOnPaper, showPaper } from '../browser/paperPages';
import { type Host, startHost } from '../browser/server';
import { onePaperOfEach, papersOfGarden } from '../files/papersOfGarden';

const papers = onePaperOfEach();
const folder = mkdtempSync(join(tmpdir(), 'patina-round-papers-'));
/** Of text against its ground in grey print: WCAG 2.2, 1.4.3. */
const leastContrast = 4.5;
let host: Host;
let tablet: Tablet;
let page: Page;

beforeAll(async () => {
  host = await startHost();
  tablet = await startTablet();
  page = await openApp(tablet, host);
  await page.getByRole('button', { name: w.sculptures.welcome.demo, exact: true }).click();
  await page.getByText(w.shell.inventedWhat).waitFor();
}, 120_000);

afterAll(async () => {
  await tablet?.close();
  await host?.stop();
  rmSync(folder, { recursive: true, force: true });
});

const run = (program: string, ...args: string[]): Buffer =>
  execFileSync(program, args, { timeout: 60_000, maxBuffer: 200_000_000, stdio: ['ignore', 'pipe', 'pipe'] });

/** Letters and figures only, so that lines broken elsewhere and hyphens make no difference. */
const squashed = (text: string): string => text.normalize('NFKC').replace(/[^\p{L}\p{N}]/gu, '');

/** The text of each page, in the order in which it was set, without the line at its foot. */
const pagesOf = (pdf: string, foot: string): string[][] => {
  const footed = squashed(foot);
  const inFoot = (line: string) => footed.includes(squashed(line.replace(/page \d+ of \d+/i, '')));
  return run('pdftotext', '-raw', '-enc', 'UTF-8', pdf, '-')
    .toString('utf8')
    .split('\f')
    .slice(0, -1)
    .map((text) => text.split('\n').filter((line) => squashed(line) !== '' && !inFoot(line)));
};

interface Word {
  readonly page: number;
  readonly text: string;
  /** Points from the left and upper edge. */
  readonly box: readonly [number, number, number, number];
}

const wordsOf = (pdf: string): Word[] => {
  const html = run('pdftotext', '-bbox', pdf, '-').toString('utf8');
  return html
    .split('<page ')
    .slice(1)
    .flatMap((text, i) =>
      [...text.matchAll(/<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">([^<]*)</g)].map(
        ([, x0, y0, x1, y1, word = '']) => ({
          page: i,
          text: word,
          box: [Number(x0), Number(y0), Number(x1), Number(y1)] as const,
        }),
      ),
    );
};

const dots = 110;

/** Pages as grey pictures (PGM, one byte a pixel), as a printer without colours would see them. */
function greyPages(pdf: string): { width: number; height: number; at: Uint8Array }[] {
  const root = pdf.replace(/\.pdf$/, '');
  run('pdftoppm', '-gray', '-r', String(dots), pdf, root);
  const files = run('sh', '-c', `ls ${root}-*.pgm`).toString('utf8').trim().split('\n');
  return files.map((file) => {
    const bytes = readFileSync(file);
    rmSync(file);
    const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 30).toString('latin1'))!;
    return { width: Number(head[1]), height: Number(head[2]), at: bytes.subarray(head[0].length) };
  });
}

const luminance = (grey: number): number => {
  const c = grey / 255;
  return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
};

/** Words that stand out too little from what lies around them. */
function pale(pdf: string): string[] {
  const pictures = greyPages(pdf);
  return wordsOf(pdf).flatMap(({ page: at, text, box }) => {
    const picture = pictures[at]!;
    const [x0, y0, x1, y1] = box.map((points) => Math.round((points * dots) / 72)) as [number, number, number, number];
    const greys: number[] = [];
    for (let y = Math.max(0, y0); y < Math.min(picture.height, y1); y += 1)
      for (let x = Math.max(0, x0); x < Math.min(picture.width, x1); x += 1)
        greys.push(picture.at[y * picture.width + x]!);
    // Signs of a pixel or two say nothing; turned words have a box of another shape.
    if (greys.length < 40 || !/[\p{L}\p{N}]{2}/u.test(text)) return [];
    const [dark, bright] = [Math.min(...greys), Math.max(...greys)];
    const contrast = (luminance(bright) + 0.05) / (luminance(dark) + 0.05);
    return contrast < leastContrast ? [`page ${at + 1}: “${text}” ${contrast.toFixed(1)}`] : [];
  });
}

/** Rows of which no page holds every cell whole. */
function cutRows(pages: readonly string[][], rows: readonly (readonly string[])[]): string[] {
  const texts = pages.map((lines) => squashed(lines.join('')));
  return rows
    .filter((cells) => !texts.some((text) => cells.every((cell) => text.includes(squashed(cell)))))
    .map((cells) => cells.join(' | '));
}

/** Headings that are the last thing said on a page. */
const leftAlone = (pages: readonly string[][], headings: readonly string[]): string[] => {
  const all = new Set(headings.map(squashed));
  return pages.flatMap((lines, i) => {
    const last = squashed(lines.at(-1) ?? '');
    return i < pages.length - 1 && all.has(last) ? [`page ${i + 1}: ${lines.at(-1)}`] : [];
  });
};

async function printedTo(name: string, size: SheetSize): Promise<string> {
  await chooseSheet(page, size);
  const file = join(folder, `${name}-${size}.pdf`);
  writeFileSync(file, await printed(page));
  return file;
}

/** All that is wrong with a paper as it lies there. */
async function faultsOf(name: string, size: SheetSize): Promise<{ told: string; faults: string[] }> {
  const said = await saidOnPaper(page);
  const file = await printedTo(name, size);
  const pages = pagesOf(file, said.foot);
  const text = squashed(pages.flat().join(''));
  const missing = said.headings.filter((heading) => !text.includes(squashed(heading)));
  return {
    told: `${size} ${pages.length} pages, ${Math.round(readFileSync(file).length / 1000)} kB`,
    faults: [
      ...missing.map((heading) => `not on paper: ${heading}`),
      ...cutRows(pages, said.rows).map((row) => `cut: ${row}`),
      ...leftAlone(pages, said.headings).map((heading) => `stands alone: ${heading}`),
      ...pale(file).map((word) => `pale: ${word}`),
    ],
  };
}

test('a paper set badly is found out: rows cut, headings left alone, words too pale for grey print', async () => {
  await showPaper(page, papers[0]!.hash);
  await page.evaluate(() => {
    const bad = new CSSStyleSheet();
    bad.replaceSync(`.paper tr { break-inside: auto !important; } .paper td { line-height: 9cm !important; }
      .paper h2 { break-after: page !important; } .paper p { color: #b0b0b0 !important; print-color-adjust: exact !important; }`);
    document.adoptedStyleSheets.push(bad);
  });
  const { faults } = await faultsOf('bad', 'A4');
  await page.evaluate(() => document.adoptedStyleSheets.pop());
  for (const kind of ['cut', 'stands alone', 'pale'])
    expect(
      faults.some((fault) => fault.startsWith(kind)),
      kind,
    ).toBe(true);
}, 60_000);

test.each(papers.map((paper) => ({ ...paper, name: paper.sort.id })))(
  '$name on paper: all its words are there, no row is cut, no heading stands alone, and it can be read in grey',
  async ({ name, hash }) => {
    await showPaper(page, hash);
    const [a4, letter] = [await faultsOf(name, 'A4'), await faultsOf(name, 'Letter')];
    process.stdout.write(`  ${name}: ${a4.told}; ${letter.told}\n`);
    expect(a4.faults).toEqual([]);
    expect(letter.faults).toEqual([]);
  },
  120_000,
);

test('the report of every work keeps to its pages', async () => {
  const found: string[] = [];
  for (const { sort, label, hash } of papersOfGarden().filter(({ sort }) => sort.id === papers[0]!.sort.id)) {
    await showPaper(page, hash);
    const pages = pagesOf(await printedTo('report', 'A4'), '').length;
    if (pages < sort.pages[0] || pages > sort.pages[1]) found.push(`${label}: ${pages}`);
  }
  expect(found).toEqual([]);
}, 120_000);
