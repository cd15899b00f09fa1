import { date, w } from '../../words';
import type { Paper } from './paper';

/** What is known of a paper only when it leaves: who made it, and whether it is final. */
export interface PaperIssue {
  readonly author: string;
  readonly status: 'draft' | 'final';
  /** Calendar day, YYYY-MM-DD. */
  readonly day: string;
  readonly size: 'A4' | 'Letter';
  readonly invented: boolean;
}

const words = w.paperLayout;

/** Work number, day, author, draft or final, state of the record and version of the scale, for the foot of every page. */
export const footLine = ({ number, state, scale }: Paper, { author, status, day, invented }: PaperIssue): string =>
  [
    invented && words.invented,
    number,
    date(day),
    author,
    words.status[status],
    words.state(state),
    scale && words.scale(scale),
  ]
    .filter(Boolean)
    .join(' · ');

/** As a text in a style sheet: nothing in it ends the text or begins anything else. */
const asCssText = (text: string): string =>
  `"${text.replace(/[^\p{L}\p{N} .,:;·()/+–-]/gu, (sign) => `\\${sign.codePointAt(0)?.toString(16)} `)}"`;

/** The sheet and the foot of each page. Browsers that draw no page margins leave them out; the paper ends with the same line. */
export const pageCss = (paper: Paper, issue: PaperIssue): string => {
  const { page, of } = words.pageOf;
  return `@page{size:${issue.size}${paper.turned ? ' landscape' : ''};margin:16mm 16mm 20mm 18mm;
@bottom-left{content:${asCssText(footLine(paper, issue))};font:8pt/1.3 system-ui,sans-serif;color:#000;text-align:left;width:82%;vertical-align:top;padding-top:3mm}
@bottom-right{content:${asCssText(page)} counter(page) ${asCssText(of)} counter(pages);font:8pt/1.3 system-ui,sans-serif;color:#000;vertical-align:top;padding-top:3mm}}`;
};
