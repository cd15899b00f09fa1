import { expect, it } from 'vitest';
import { type BagContents, readmeText, reportHtml } from '../../../src/papers';
import { smallSurvey } from '../../files/smallSurvey';

const sha256 = 'ab'.repeat(32);
const contents = (more: Partial<BagContents> = {}): BagContents => ({
  ...smallSurvey(),
  made: '2026-05-13',
  photos: [{ sha256, path: `data/photos/${sha256}.jpg`, bytes: 2_400_000 }],
  missing: [],
  leftOut: [],
  ...more,
});

/** Puts a text into every free field of the survey. */
const withText = (text: string) =>
  smallSurvey().entries.map((entry) => ({
    ...entry,
    body: Object.fromEntries(
      Object.entries(entry.body).map(([field, value]) => [
        field,
        ['title', 'number', 'name', 'note', 'text', 'statement', 'what', 'maker', 'material', 'by'].includes(field) &&
        typeof value === 'string'
          ? text
          : value,
      ]),
    ),
  }));

it('the report tells the work, its findings, what was done and, apart, what was thought', () => {
  const report = reportHtml(contents());
  for (const text of ['Green spots', 'in the metal', 'Cold wax', '2 coats', 'leans', 'By the pond', 'Index'])
    expect(report).toContain(text);
  const thought = report.indexOf('The pond keeps it damp');
  expect(thought).toBeGreaterThan(report.indexOf('<aside>'));
  expect(report.slice(0, report.indexOf('<aside>'))).not.toContain('The pond keeps it damp');
});

it('the report asks no address and runs nothing: pictures lie beside it, and the only other targets are its own headings', () => {
  const report = reportHtml(contents());
  const targets = [...report.matchAll(/(?:src|href)="([^"]*)"/g)].map(([, target]) => target ?? '');
  expect(targets).toContain(`photos/${sha256}.jpg`);
  for (const target of targets) expect(target).toMatch(/^(photos\/[0-9a-f]{64}\.jpg|#work-.+)$/);
  expect(report).not.toMatch(/<script|javascript:|@import|url\(|https?:\/\//i);
});

it.each([
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  '</style><b>',
  "' onmouseover='x",
  '&lt;i&gt;',
])('what a person wrote stands in the report as text, whatever it holds: %s', (text) => {
  const plain = reportHtml(contents({ entries: withText('Plain') }));
  const report = reportHtml(contents({ entries: withText(text) }));
  const tags = (page: string) => [...page.matchAll(/<[a-z/!][^>]*>/gi)].map(([tag]) => tag.split(/[\s>]/)[0]);
  expect(tags(report)).toEqual(tags(plain));
  expect(report).toContain(
    text
      .replaceAll('&', '&amp;')
      .replaceAll('<', '&lt;')
      .replaceAll('>', '&gt;')
      .replaceAll('"', '&quot;')
      .replaceAll("'", '&#39;'),
  );
});

it('a photo that is not in the bag says so in the report, and is listed in the README', () => {
  const without = contents({ photos: [], missing: [sha256] });
  expect(reportHtml(without)).toContain('picture not in this bag');
  expect(reportHtml(without)).not.toContain('<img');
  expect(readmeText(without).split('\r\n')).toContain(sha256);
});

it('what was left out is said in both', () => {
  const leaving = contents({ leftOut: ['names', 'insert values'] });
  expect(reportHtml(leaving)).toContain('Left out when it was written: names of people and values of inserts.');
  expect(readmeText(leaving)).toContain('names of people, values of inserts');
});

it('what was thought of one zone names it; a zone looked at and one not looked at are told apart', () => {
  const report = reportHtml(contents());
  expect(report).toMatch(/Zone A[^<]*: The pond/);
  expect(report).toContain('not in this round');
});

it('the README keeps to 76 columns and to the line ends every system reads', () => {
  const readme = readmeText(contents());
  const lines = readme.split('\r\n');
  expect(readme.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  for (const line of lines) expect(line.length).toBeLessThanOrEqual(76);
  for (const name of ['data/report.html', 'data/survey.json', 'manifest-sha256.txt']) expect(lines).toContain(name);
});

it('an empty survey makes a report and a README all the same', () => {
  const empty = contents({ entries: [], photos: [] });
  expect(reportHtml(empty)).toContain('0 works');
  expect(readmeText(empty)).toContain('sha256sum -c');
});
