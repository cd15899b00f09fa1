import { createElement, Fragment, type ReactNode } from 'react';
import { classOnPaper, type PaperNode, type PaperPiece } from '../../papers/layout';
import { PaperPicture } from './PaperPicture';

/** HTML and SVG name some attributes otherwise than React. */
const named: Readonly<Record<string, string>> = {
  class: 'className',
  colspan: 'colSpan',
  rowspan: 'rowSpan',
  tabindex: 'tabIndex',
};
const asReact = (name: string): string =>
  named[name] ??
  (/^(?:aria|data)-/.test(name) ? name : name.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase()));

/** A piece of a paper on the screen: the same elements as in its file. */
export const toReact = (piece: PaperPiece, key = 0): ReactNode => {
  if (piece === undefined || piece === false) return null;
  if (typeof piece === 'string' || typeof piece === 'number') return piece;
  if (Array.isArray(piece)) return <Fragment key={key}>{piece.map((one, i) => toReact(one, i))}</Fragment>;
  if ('picture' in piece) return <PaperPicture key={key} sha256={piece.picture} alt={piece.alt} />;
  const { tag, at, in: pieces } = piece as PaperNode;
  const attributes = Object.fromEntries(
    Object.entries(at).map(([name, value]) => [
      asReact(name),
      name === 'class' && value !== undefined ? classOnPaper(`${value}`) : value,
    ]),
  );
  return createElement(tag, { ...attributes, key }, ...pieces.map((one, i) => toReact(one, i)));
};
