import { expect, it } from 'vitest';
import { type BagContents, paperSorts, papersInBag, reportHtml } from '../../../src/papers';
import { smallSurvey } from '../../files/smallSurvey';

const sha256 = 'ab'.repeat(32);
const contents = (more: Partial<BagContents> = {}): BagContents => ({
  ...smallSurvey(),
  made: '2026-05-13',
  photos: [{ sha256, path: `data/photos/${sha256}.jpg`, bytes: 2_400_000 }],
  missing: [],
  leftOut: [],
  states: new Map(smallSurvey().entries.map(({ within }) => [within, 'k3f9a'])),
  ...more,
});

it('every paper lies under a name of its own, and the report leads to each', () => {
  const papers = papersInBag(contents());
  expect(papers.length).toBeGreaterThan(0);
  expect(new Set(papers.map(({ path }) => path)).size).toBe(papers.length);
  const report = reportHtml(contents(), papers);
  for (const { path } of papers) {
    expect(path).toMatch(/^data\/papers\/[A-Za-z0-9-]+\.html$/);
    expect(report).toContain(`href="${path.replace('data/', '')}"`);
  }
});

it('every paper runs nothing, asks no address, says that it is a draft, and of what state of the record', () => {
  for (const { path, html } of papersInBag(contents())) {
    expect(html, path).not.toMatch(/<script|javascript:|@import|url\((?!#)|https?:\/\/|\son\w+=/i);
    for (const [, target] of html.matchAll(/(?:src|href)="([^"]*)"/g))
      expect(target, path).toMatch(/^(?:\.\.\/photos\/[0-9a-f]{64}\.jpg|#.+)$/);
    expect(html, path).toMatch(/Draft/);
    expect(html, path).toMatch(/record [0-9a-z]{5,}/);
  }
});

it.each(['<script>alert(1)</script>', '"><img src=x onerror=alert(1)>', '</style><b>', '"}body{display:none}'])(
  'what a person wrote stands in every paper as text, and in its style as nothing else: %s',
  (text) => {
    const withText = (said: string) =>
      smallSurvey().entries.map((entry) => ({
        ...entry,
        body: Object.fromEntries(
          Object.entries(entry.body).map(([field, value]) => [
            field,
            ['title', 'number', 'name', 'note', 'text', 'statement', 'maker', 'by'].includes(field) &&
            typeof value === 'string'
              ? said
              : value,
          ]),
        ),
      }));
    const tagsOf = (page: string) =>
      [...page.matchAll(/<[a-z/!][^>]*>/gi)].map(([tag]) => tag.split(/[\s>]/)[0]).sort();
    const styleOf = (page: string) => page.split('<style>')[1]?.split('</style>')[0] ?? '';
    const plain = papersInBag(contents({ entries: withText('Plain') }));
    const hostile = papersInBag(contents({ entries: withText(text) }));
    expect(hostile.map(({ html }) => tagsOf(html))).toEqual(plain.map(({ html }) => tagsOf(html)));
    for (const { html } of hostile) {
      // A text of a style sheet ends at its quotation mark, and every such sign of the person's is written by its number.
      expect(styleOf(html).match(/"/g)?.length).toBe(styleOf(plain[0]?.html ?? '').match(/"/g)?.length);
      expect(styleOf(html)).not.toContain('{display:none}');
    }
  },
);

it('a bag of every kind of paper there is', () => {
  const survey = papersInBag(contents());
  const made = new Set(survey.map(({ path }) => paperSorts.find(({ id }) => path.includes(id))?.id));
  for (const { id, about } of paperSorts) if (about === 'work') expect([...made]).toContain(id);
});
