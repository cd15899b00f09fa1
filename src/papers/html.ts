/** Text that is HTML already. Everything else that goes into a page is written as text. */
export interface Html {
  readonly html: string;
}

type Piece = Html | string | number | undefined | false | readonly Piece[];

const signs: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

const written = (piece: Piece): string => {
  if (piece === undefined || piece === false) return '';
  if (Array.isArray(piece)) return piece.map(written).join('');
  if (typeof piece === 'object') return (piece as Html).html;
  return String(piece).replace(/[&<>"']/g, (sign) => signs[sign] ?? '');
};

/** A piece of a page: what stands in the source is HTML, what is put in is text, whatever it holds. */
export const html = (parts: TemplateStringsArray, ...pieces: readonly Piece[]): Html => ({
  html: parts.map((part, i) => part + (i < pieces.length ? written(pieces[i]) : '')).join(''),
});

/** Text of several lines. */
export const lines = (text: string): Html[] =>
  text.split(/\r\n|\n|\r/).map((line, i) => (i === 0 ? html`${line}` : html`<br>${line}`));
