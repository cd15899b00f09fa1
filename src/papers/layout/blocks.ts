import { w } from '../../words';
import { h, type PaperNode, type PaperPiece } from './tree';

const words = w.paperLayout;

/** Every paper is put together from these and nothing else, so that all of them look, break and read alike. */
export const section = (title: string, ...pieces: readonly PaperPiece[]): PaperNode =>
  h('section', { class: 'part' }, h('h2', {}, title), ...pieces);

export const under = (title: string, ...pieces: readonly PaperPiece[]): PaperNode =>
  h('div', { class: 'under' }, h('h3', {}, title), ...pieces);

/** A paragraph; line breaks a person typed are kept. */
export const say = (text: string, kind?: 'lead' | 'small' | 'mark' | 'keep-on'): PaperNode =>
  h(
    'p',
    kind ? { class: kind === 'mark' ? 'paper-mark' : kind } : {},
    ...text.split(/\r\n|\n|\r/).flatMap((line, i): PaperPiece[] => (i === 0 ? [line] : [h('br', {}), line])),
  );

export const list = (items: readonly PaperPiece[], kind: 'ul' | 'ol' = 'ul'): PaperNode | undefined =>
  items.length === 0 ? undefined : h(kind, {}, ...items.map((item) => h('li', {}, item)));

/** Names and what they are; rows without a value are left out. */
export const facts = (rows: readonly (readonly [name: string, value: PaperPiece])[]): PaperNode | undefined => {
  const told = rows.filter(([, value]) => value !== undefined && value !== false && value !== '');
  return told.length === 0
    ? undefined
    : h('dl', { class: 'facts' }, ...told.map(([name, value]) => h('div', {}, h('dt', {}, name), h('dd', {}, value))));
};

export interface Column {
  readonly head: string;
  /** Numbers stand to the right; a narrow column does not wrap. */
  readonly kind?: 'number' | 'narrow' | 'wide';
}

/** Tables of no more rows are kept on one page. */
const short = 8;

/**
 * A table whose rows are never cut by a page and whose head is on each page. The first cell of a row names it. Without a caption ('')
 * it is told by the heading above it.
 */
export const table = (
  caption: string,
  columns: readonly Column[],
  rows: readonly (readonly PaperPiece[])[],
  foot?: readonly PaperPiece[],
): PaperNode => {
  const cell = (piece: PaperPiece, i: number) =>
    h(i === 0 ? 'th' : 'td', { ...(i === 0 ? { scope: 'row' } : {}), class: columns[i]?.kind }, piece);
  return h(
    'table',
    // On a narrow screen it is pushed sideways, which a keyboard must be able to do too.
    { tabindex: 0, ...(rows.length <= short ? { class: 'short' } : {}) },
    caption !== '' && h('caption', {}, caption),
    h('thead', {}, h('tr', {}, ...columns.map(({ head, kind }) => h('th', { scope: 'col', class: kind }, head)))),
    h(
      'tbody',
      {},
      ...rows.map((row) => h('tr', {}, ...row.map(cell))),
      foot && h('tr', { class: 'sum' }, ...foot.map(cell)),
    ),
  );
};

/** A number, and one line below it how it came about and how far it may be off. */
export const figure = (name: string, value: string, how: string): PaperNode =>
  h(
    'div',
    { class: 'figure' },
    h('p', { class: 'figure-name' }, name),
    h('p', { class: 'figure-value' }, value),
    h('p', { class: 'figure-how' }, how),
  );

/** What was seen and what was thought never share a box. */
export const seen = (...pieces: readonly PaperPiece[]): PaperNode =>
  h('div', { class: 'box seen' }, h('p', { class: 'box-name' }, words.seen), ...pieces);
export const thought = (...pieces: readonly PaperPiece[]): PaperNode =>
  h(
    'aside',
    { class: 'box thought', 'aria-label': words.thought },
    h('p', { class: 'box-name' }, words.thought),
    ...pieces,
  );
/** What was left: stands first, before all that was seen or done. */
export const leftFirst = (name: string, ...pieces: readonly PaperPiece[]): PaperNode =>
  h('div', { class: 'box not-looked' }, h('p', { class: 'box-name' }, name), ...pieces);
/** What was not looked at: stands first in every paper that tells of a round. */
export const notLooked = (...pieces: readonly PaperPiece[]): PaperNode => leftFirst(words.notLooked, ...pieces);
/** Something that could hurt a person, or a rule of safety. */
export const danger = (...pieces: readonly PaperPiece[]): PaperNode =>
  h('div', { class: 'box danger' }, h('p', { class: 'box-name' }, words.danger), ...pieces);

/** Pictures side by side, each with its caption, none cut by a page. */
export const pictures = (
  all: readonly { readonly sha256: string; readonly caption: string }[],
  size: 'strip' | 'small' | 'pair' | 'large' = 'small',
): PaperNode | undefined =>
  all.length === 0
    ? undefined
    : h(
        'div',
        { class: `pictures ${size}` },
        ...all.map(({ sha256, caption }) =>
          h('figure', {}, { picture: sha256, alt: caption }, h('figcaption', {}, caption)),
        ),
      );

/** A drawing in lines, told in words as well. */
export const drawing = (told: string, box: string, ...pieces: readonly PaperPiece[]): PaperNode =>
  h('svg', { class: 'drawing', viewBox: box, role: 'img', 'aria-label': told }, ...pieces);

/** Room to write by hand: a name, and so many lines. */
export const room = (name: string, lines = 1): PaperNode =>
  h(
    'div',
    { class: 'room' },
    h('p', { class: 'room-name' }, name),
    ...Array.from({ length: lines }, () => h('p', { class: 'room-line' })),
  );

/** Boxes to tick by hand, in a row. */
export const boxes = (names: readonly string[]): PaperNode =>
  h(
    'p',
    { class: 'boxes' },
    ...names.map((name) => h('span', { class: 'tick-box' }, h('span', { class: 'tick', 'aria-hidden': 'true' }), name)),
  );

/** Where people sign: role, name where known, date. */
export const signatures = (
  people: readonly { readonly role: string; readonly name?: string | undefined }[],
): PaperNode =>
  h(
    'div',
    { class: 'signatures' },
    ...people.map(({ role, name }) =>
      h(
        'div',
        {},
        h('p', { class: 'room-line' }),
        h('p', {}, name ? `${name}, ${role}` : role),
        h('p', { class: 'small' }, words.signedOn),
      ),
    ),
  );

/** What follows begins on a new page. */
export const newPage = (...pieces: readonly PaperPiece[]): PaperNode => h('div', { class: 'new-page' }, ...pieces);

/** Kept together on one page, as far as it fits on one. */
export const together = (...pieces: readonly PaperPiece[]): PaperNode => h('div', { class: 'together' }, ...pieces);

/** Two columns beside each other on the sheet, one under the other on a narrow screen; no part is cut by a column. */
export const columns = (...pieces: readonly PaperPiece[]): PaperNode => h('div', { class: 'columns' }, ...pieces);

/** Set a little closer: letters, and papers that have to keep to few pages. */
export const close = (...pieces: readonly PaperPiece[]): PaperNode => h('div', { class: 'close' }, ...pieces);

/** Set smaller and closer: annexes and cards that have to keep to their pages. */
export const fine = (...pieces: readonly PaperPiece[]): PaperNode => h('div', { class: 'fine' }, ...pieces);

/** Figures in a row. */
export const figures = (...pieces: readonly PaperPiece[]): PaperNode => h('div', { class: 'figures' }, ...pieces);
