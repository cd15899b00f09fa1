import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { w } from '../../src/words';
import { openApp } from '../browser/app';
import { startTablet } from '../browser/chromium';
import { startHost } from '../browser/server';

const dpi = 600;

/** Lengths of the black lines of about ten centimetres on a sheet as poppler paints it, from top to bottom, millimetres; one a line of pixels. */
const longLines = async (pdf: string, page: number): Promise<number[]> => {
  const sheet = pdf.replace('.pdf', `-${page}`);
  const args = ['-r', String(dpi), '-f', String(page), '-l', String(page), '-singlefile', '-gray', '-png', pdf, sheet];
  const painted = spawnSync('pdftoppm', args, { encoding: 'utf8' });
  if (painted.status !== 0) throw new Error(painted.stderr);
  const { data, info } = await sharp(`${sheet}.png`).toColourspace('b-w').raw().toBuffer({ resolveWithObject: true });
  const lengths: number[] = [];
  for (let y = 0; y < info.height; y++) {
    let run = 0;
    let longest = 0;
    for (let x = 0; x < info.width; x++) {
      run = (data[(y * info.width + x) * info.channels] ?? 255) < 128 ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
    const mm = (longest / dpi) * 25.4;
    if (mm > 90 && mm < 120) lengths.push(mm);
  }
  return lengths;
};

// Painted by poppler (Debian poppler-utils) from the PDF Chromium prints, and measured with a ruler of pixels.
test.each(['A4', 'Letter'] as const)(
  'the bar of a card printed on %s is 100 mm to half a millimetre',
  async (paper) => {
    const folder = mkdtempSync(join(tmpdir(), 'patina-round-cards-'));
    const host = await startHost();
    const tablet = await startTablet();
    const page = await openApp(tablet, host, '#/welcome');
    await page.getByRole('button', { name: w.sculptures.welcome.demo }).click();
    await page.getByText('Half-Tide Stair').first().waitFor();
    await page.evaluate(() => {
      location.hash = '/cards';
    });
    await page.getByRole('radio', { name: paper, exact: true }).check({ force: true });
    const pdf = join(folder, 'cards.pdf');
    await page.pdf({ path: pdf, preferCSSPageSize: true });
    const lines = await longLines(pdf, 2);
    // Three lines of one millimetre on each of two cards.
    expect(Math.round(lines.length / (dpi / 25.4))).toBeGreaterThanOrEqual(6);
    const bars = lines.filter((mm) => mm > 90);
    expect(Math.max(...bars)).toBeLessThanOrEqual(100.5);
    expect(Math.min(...bars)).toBeGreaterThanOrEqual(99.5);
    await tablet.close();
    await host.stop();
    rmSync(folder, { recursive: true });
  },
);
