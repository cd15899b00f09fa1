import { tongueNow, w } from '../../words';
import { footLine, type PaperIssue, pageCss } from './foot';
import type { Paper } from './paper';
import style from './paper.css?inline';
import { toHtml } from './toHtml';
import { h, type PaperPiece } from './tree';

const words = w.paperLayout;

/** The paper as it is read, from its title to the line that stands at the foot of its pages. */
export const paperTree = (paper: Paper, issue: PaperIssue): PaperPiece =>
  h(
    'article',
    { class: 'paper' },
    h(
      'header',
      {},
      issue.invented && h('p', { class: 'paper-mark' }, words.inventedWhole),
      h('p', { class: 'over' }, paper.over),
      h('h1', {}, paper.title),
      issue.status === 'draft' && h('p', { class: 'status' }, words.draftWhole),
    ),
    ...paper.body,
    h('footer', {}, h('p', {}, footLine(paper, issue))),
  );

/** One HTML file that needs nothing else: its style is in it, it runs no script and asks nothing of a network. */
export const paperHtml = (
  paper: Paper,
  issue: PaperIssue,
  pictureAt: (sha256: string) => string | undefined,
): string => `<!doctype html>
<html lang="${tongueNow().language}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src data: 'self' file: blob:">
<meta name="viewport" content="width=device-width">
<title>${toHtml(`${paper.title}: ${paper.over}`, () => undefined, '')}</title>
<style>${style}
${pageCss(paper, issue)}</style>
</head>
<body class="paper-alone">
<main>${toHtml(paperTree(paper, issue), pictureAt, words.notHere)}</main>
</body>
</html>
`;
