import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { paperHtml } from '../../../src/papers/layout';
import { paperSorts } from '../../../src/papers/registry';
import { garden } from './paperOf';

const classesOfPapers = (): ReadonlySet<string> => {
  const issue = { author: '', status: 'draft', day: '2026-10-15', size: 'A4', invented: true } as const;
  const pages = paperSorts.flatMap((sort) => {
    const about = sort.choices(garden())[0]?.about;
    const paper = about === undefined ? undefined : sort.make(garden(), about);
    return paper ? [paperHtml(paper, issue, () => undefined)] : [];
  });
  const written = pages.flatMap((page) => [...page.matchAll(/ class="([^"]*)"/g)].map(([, names = '']) => names));
  return new Set(written.flatMap((names) => names.split(' ')));
};

const sheetsUnder = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.css'))
    .map((name) => join(folder, name));

// A screen's style sheet stays in the page when the screen is left: `.part {display: grid}` of the zones once put every paper
// that was printed afterwards into narrow columns.
it('no style sheet of a screen names a class of a paper: a paper looks the same whatever was opened before it', () => {
  const ofPapers = classesOfPapers();
  expect(ofPapers.size).toBeGreaterThan(40);
  const shared = sheetsUnder('src/screens').flatMap((path) => {
    const css = readFileSync(path, 'utf8').replace(/\/\*[\s\S]*?\*\//g, '');
    const selectors = [...css.matchAll(/([^{}]+)\{/g)].map(([, text = '']) => text);
    const named = selectors.flatMap((text) => [...text.matchAll(/\.([a-z][\w-]*)/g)].map(([, name = '']) => name));
    return [...new Set(named)].filter((name) => ofPapers.has(name)).map((name) => `${path}: .${name}`);
  });
  expect(shared).toEqual([]);
});
