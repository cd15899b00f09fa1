import { date, pageFoot, w } from '../../words';
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

/** The sheet and the foot of each page. Browsers that draw no page margins leave them out; the paper ends with the same line. */
export const pageCss = (paper: Paper, issue: PaperIssue): string =>
  pageFoot(footLine(paper, issue), `${issue.size}${paper.turned ? ' landscape' : ''}`, '16mm 16mm 20mm 18mm');
