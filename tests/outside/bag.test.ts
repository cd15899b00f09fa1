import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { hashOf, picture } from '../files/bags';
import { writtenBag } from '../files/writtenBag';
import { askPython } from './python';

// Debian's unzip, sha256sum of coreutils, and Python's own zipfile know nothing of how this app writes.
const folder = mkdtempSync(join(tmpdir(), 'patina-round-bag-'));
const file = join(folder, 'bag.survey.zip');
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test('unzip and sha256sum accept a bag as it is, and every photo comes out as it went in', async () => {
  const pictures = [1, 2, 3].map((n) => picture(n, 200_000 + n));
  writeFileSync(file, Buffer.concat(await writtenBag(pictures)));
  expect(execFileSync('unzip', ['-t', file], { encoding: 'utf8' })).toMatch(/^No errors detected/m);
  execFileSync('unzip', ['-q', file, '-d', folder]);
  const base = join(folder, 'bag');
  for (const manifest of ['manifest-sha256.txt', 'tagmanifest-sha256.txt'])
    execFileSync('sha256sum', ['--strict', '--quiet', '-c', manifest], { cwd: base });
  for (const bytes of pictures)
    expect(Buffer.compare(readFileSync(join(base, 'data/photos', `${hashOf(bytes)}.jpg`)), Buffer.from(bytes))).toBe(0);
  const told = askPython('import sys, zipfile; print(zipfile.ZipFile(sys.argv[1]).testzip())', file);
  expect(told.trim()).toBe('None');
});
