export * from './blocks';
export { classOnPaper } from './classOnPaper';
export { footLine, type PaperIssue, pageCss } from './foot';
export type { OwnWords, Paper, PaperAbout, PaperSort } from './paper';
export { h, type PaperNode, type PaperPicture, type PaperPiece, picturesIn, textOf } from './tree';
export { paperHtml, paperTree } from './wholePaper';
