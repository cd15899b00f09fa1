import { activities, beadings, ladder, origins, reasonsNotLooked, severities } from '../../engine/trade';
import { w } from '../../words';
import { h, type PaperNode, type PaperPiece } from '../layout';
import type { EarlierKind } from './earlierKinds';
import { patchOf } from './ladderOfPatches';

const words = w.paperCards;

/** Rows of a card at least, and blank ones at least: room for what was not there before. */
const fewestRows = 3;
const fewestBlank = 2;

export interface OnCard {
  readonly letter: string;
  readonly name: string;
  /** Where in the walk, how large, from where. */
  readonly place: readonly string[];
  readonly kinds: readonly EarlierKind[];
}

/** Kind, where it comes from, share, how bad, at work, photos. */
const columnsOfCard = 2 + origins.length + ladder.length + severities.length + activities.length;

/** Rows of kinds on a card: those of earlier rounds and blank ones. */
export const rowsOfCard = ({ kinds }: OnCard): number => kinds.length + blankRows(kinds);
const blankRows = (kinds: readonly EarlierKind[]): number => Math.max(fewestBlank, fewestRows - kinds.length);

/** One zone: one tick for the whole of it, or a row for each kind, and at the foot what comes last. */
export const zoneCard = ({ letter, name, place, kinds }: OnCard): PaperNode =>
  h(
    'tbody',
    { class: 'zone-card' },
    across(
      h(
        'div',
        { class: 'card-name' },
        h('h2', {}, words.zone(letter, name)),
        h('span', {}, place.join(' · ')),
        tick(words.oneTouch.nothing),
        tick(words.oneTouch.carried),
      ),
    ),
    across(
      h(
        'p',
        { class: 'card-ticks' },
        h('strong', {}, words.oneTouch.notLooked),
        ...reasonsNotLooked.map((reason) => tick(reason.name)),
        h('span', { class: 'card-write wide' }, words.note),
      ),
    ),
    ...kinds.map(rowOf),
    ...Array.from({ length: blankRows(kinds) }, () => rowOf(undefined)),
    across(
      h(
        'p',
        { class: 'card-ticks' },
        h('strong', {}, words.beading),
        ...beadings.map((one) => tick(one.name)),
        write(words.zonePhotos),
        write(words.initials),
        write(words.time),
      ),
    ),
  );

/** A row that is no row of a table: text from edge to edge. */
const across = (piece: PaperPiece): PaperNode =>
  h('tr', {}, h('td', { colspan: columnsOfCard, class: 'card-across' }, piece));

const tick = (name: string): PaperNode =>
  h('span', { class: 'tick-box' }, h('span', { class: 'tick', 'aria-hidden': 'true' }), name);
const write = (name: string): PaperNode => h('span', { class: 'card-write' }, name);

const { kind, from, share, severity, activity, photos } = words.columns;

/** Over all cards of a sheet. */
export const headOfCards = (): PaperNode =>
  h(
    'thead',
    {},
    h(
      'tr',
      {},
      h('th', { scope: 'col', rowspan: 2, class: 'card-kind' }, kind),
      ...[
        [from, origins.length],
        [share, ladder.length],
        [severity, severities.length],
        [activity, activities.length],
      ].map(([text, span]) => h('th', { scope: 'colgroup', colspan: span }, text)),
      h('th', { scope: 'col', rowspan: 2, class: 'card-photos' }, photos),
    ),
    h(
      'tr',
      {},
      ...origins.map(({ id }) => upright(words.fromShort[id])),
      ...ladder.map(({ label, value }) =>
        h('th', { scope: 'col', class: 'card-step' }, value > 0 && patchOf(value, label), label),
      ),
      ...severities.map(({ id }) => upright(words.severityShort[id])),
      ...activities.map(({ id }) => upright(words.activityShort[id])),
    ),
  );

const upright = (text: string): PaperNode => h('th', { scope: 'col', class: 'card-upright' }, h('span', {}, text));

/** What is known of an earlier kind is printed: its name and where it comes from. The rest is the own eye's. */
const rowOf = (earlier: EarlierKind | undefined): PaperNode =>
  h(
    'tr',
    {},
    // A line left for her own hand has no head to be read out.
    earlier ? h('th', { scope: 'row', class: 'card-kind' }, earlier.kind.name) : h('td', { class: 'card-kind' }),
    ...origins.map(({ id }) => cell(earlier?.origin === id)),
    ...extentOf(earlier),
    ...severities.map(() => cell()),
    ...activities.map(() => cell()),
    h('td', { class: 'card-photos' }),
  );

const cell = (known = false): PaperNode => h('td', known ? { class: 'card-known' } : {}, known && '×');

const extentOf = (earlier: EarlierKind | undefined): PaperPiece[] =>
  earlier && earlier.kind.measure !== 'area'
    ? [
        h(
          'td',
          { colspan: ladder.length, class: 'card-count' },
          earlier.kind.measure === 'count' ? words.countOr : tick(words.there),
          tick(words.gone),
        ),
      ]
    : ladder.map(() => cell());
