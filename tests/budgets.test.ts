import { randomBytes } from 'node:crypto';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { budgetsOf } from '../src/build/budgets.mjs';

let dist: string;

afterEach(() => rmSync(dist, { recursive: true }));

const sound = {
  'index.html': '<link rel="stylesheet" href="./assets/a.css"><script type="module" src="./assets/a.js"></script>',
  'assets/a.css': 'body { margin: 0 }',
  'assets/a.js': 'import{b}from"./b.js";import("./page.js")',
  'assets/b.js': 'export const b = 1',
  'assets/page.js': 'class ZodError {}',
};

/** A build with these files, all of them kept offline but for `left`. */
function built(files: Record<string, string | Buffer>, left: readonly string[] = []) {
  dist = mkdtempSync(join(tmpdir(), 'patina-round-budgets-'));
  mkdirSync(join(dist, 'assets'));
  const kept = Object.keys(files).filter((f) => !left.includes(f));
  writeFileSync(join(dist, 'sw.js'), `keep(${JSON.stringify(kept.map((url) => ({ revision: null, url })))})`);
  for (const [file, text] of Object.entries(files)) writeFileSync(join(dist, file), text);
  return budgetsOf(dist);
}

test('a small build passes, and a lazy page is no part of its start code', () => {
  const { faults, sizes } = built(sound);
  expect(faults).toEqual([]);
  expect(sizes[0]).toContain('4 files');
});

test('start code that grows in a file the entry only imports is refused', () => {
  const { faults } = built({ ...sound, 'assets/b.js': randomBytes(180_000).toString('base64') });
  expect(faults).toHaveLength(1);
  expect(faults[0]).toContain('start code is over its budget');
});

test('more than 2.9 MB on the tablet is refused', () => {
  expect(built({ ...sound, 'assets/demo.zip': randomBytes(2_900_001) }).faults).toEqual([
    'what the tablet keeps offline is over its budget',
  ]);
});

test('a file the worker does not keep is refused, since it would be missing in the field', () => {
  expect(built(sound, ['assets/page.js']).faults).toEqual(['assets/page.js is built but not kept offline']);
});

test('Zod in the start code is refused', () => {
  expect(built({ ...sound, 'assets/b.js': 'class ZodError {}' }).faults).toEqual([
    'assets/b.js brings Zod into the start code',
  ]);
});
