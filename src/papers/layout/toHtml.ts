import { classOnPaper } from './classOnPaper';
import type { PaperNode, PaperPiece } from './tree';

const signs: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };
const asText = (text: string | number): string => String(text).replace(/[&<>"']/g, (sign) => signs[sign] ?? '');

const empty = new Set(['br', 'hr', 'img', 'col', 'input']);

/** A piece as HTML. `pictureAt` gives the address of a picture, or undefined where it is not at hand. */
export const toHtml = (
  piece: PaperPiece,
  pictureAt: (sha256: string) => string | undefined,
  notHere: string,
): string => {
  const written = (one: PaperPiece): string => {
    if (one === undefined || one === false) return '';
    if (typeof one === 'string' || typeof one === 'number') return asText(one);
    if (Array.isArray(one)) return one.map(written).join('');
    if ('picture' in one) {
      const address = pictureAt(one.picture);
      return address
        ? `<img src="${asText(address)}" alt="${asText(one.alt)}">`
        : `<span class="${classOnPaper('no-picture')}">${asText(notHere)}</span>`;
    }
    const { tag, at, in: pieces } = one as PaperNode;
    const attributes = Object.entries(at)
      .map(([name, value]) =>
        value === undefined ? '' : ` ${name}="${asText(name === 'class' ? classOnPaper(`${value}`) : value)}"`,
      )
      .join('');
    return empty.has(tag) ? `<${tag}${attributes}>` : `<${tag}${attributes}>${pieces.map(written).join('')}</${tag}>`;
  };
  return written(piece);
};
