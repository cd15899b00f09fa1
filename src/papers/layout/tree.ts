/** An element of a paper. Attributes as HTML and SVG name them; text is always text, whatever it holds. */
export interface PaperNode {
  readonly tag: string;
  readonly at: Readonly<Record<string, string | number | undefined>>;
  readonly in: readonly PaperPiece[];
}

/** A picture: where its bytes are depends on where the paper is shown, so it is named by the SHA-256 of the photo. */
export interface PaperPicture {
  readonly picture: string;
  readonly alt: string;
}

export type PaperPiece = PaperNode | PaperPicture | string | number | undefined | false | readonly PaperPiece[];

/** One element: `h('p', { class: 'lead' }, 'text', h('em', {}, 'more'))`. */
export const h = (tag: string, at: PaperNode['at'], ...pieces: readonly PaperPiece[]): PaperNode => ({
  tag,
  at,
  in: pieces,
});

/** Every picture a piece shows, once each. */
export const picturesIn = (piece: PaperPiece): readonly string[] => {
  const found = new Set<string>();
  const walk = (one: PaperPiece): void => {
    if (one === undefined || one === false || typeof one === 'string' || typeof one === 'number') return;
    if (!Array.isArray(one) && 'picture' in one) found.add(one.picture);
    else for (const inner of Array.isArray(one) ? one : (one as PaperNode).in) walk(inner);
  };
  walk(piece);
  return [...found];
};

/** The words of a piece, blocks parted by a blank: for tests and for searching. */
export const textOf = (piece: PaperPiece): string => {
  if (piece === undefined || piece === false) return '';
  if (typeof piece === 'string' || typeof piece === 'number') return String(piece);
  if (Array.isArray(piece)) return piece.map(textOf).join('');
  if ('picture' in piece) return '';
  const inside = (piece as PaperNode).in.map(textOf).join('');
  return /^(?:p|li|h\d|td|th|dt|dd|section|figcaption|caption|div|aside)$/.test((piece as PaperNode).tag)
    ? `${inside} `
    : inside;
};
