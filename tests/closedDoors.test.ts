import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { withoutCommentsAndTexts } from './layers/imports';

const house = join(import.meta.dirname, '..');

/** What would let text become code or markup, or a page get hold of ours. */
const doors = [
  /\bdangerouslySetInnerHTML\b/,
  /\b(?:inner|outer)HTML\b/,
  /\binsertAdjacentHTML\b/,
  /\bdocument\.write(?:ln)?\b/,
  /\beval\s*\(/,
  /\bnew\s+Function\b/,
  /\bwindow\.open\b/,
  /\bsetHTMLUnsafe\b/,
  /\bcreateContextualFragment\b/,
];

const sources = readdirSync(join(house, 'src'), { recursive: true, withFileTypes: true })
  .filter((file) => file.isFile() && /\.tsx?$/.test(file.name))
  .map((file) => join(file.parentPath, file.name));

/** Ways in, in a source; each named once. */
const doorsIn = (source: string): string[] => {
  const code = withoutCommentsAndTexts(source);
  return [
    ...doors.flatMap((door) => door.exec(code)?.[0] ?? []),
    // These stand in texts: a link that opens a window of its own, an address that is a program.
    ...(/target=["'{]/.exec(source) ?? []),
    ...(/["'`]javascript:/.exec(source) ?? []),
  ];
};

test('no source has a way for text to become markup or code, nor opens a window', () => {
  const open = sources.flatMap((file) =>
    doorsIn(readFileSync(file, 'utf8')).map((door) => `${file.slice(house.length + 1)}: ${door}`),
  );
  expect(sources.length).toBeGreaterThan(300);
  expect(open).toEqual([]);
});

test.each([
  ['markup set by React', '<p dangerouslySetInnerHTML={{ __html: note }} />'],
  ['markup set by hand', 'element.innerHTML = note;'],
  ['text run as code', 'eval(note);'],
  ['a window opened', "window.open('https://example.org');"],
  ['a link that opens one', '<a href="x" target="_blank">x</a>'],
  ['an address that is a program', "link.href = 'javascript:alert(1)';"],
])('%s would be found', (_, source) => {
  expect(doorsIn(source)).not.toEqual([]);
});

test('a word in a comment or a sentence is no way in', () => {
  expect(doorsIn("// innerHTML is never used\nconst say = 'eval(x)';")).toEqual([]);
});
