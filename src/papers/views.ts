import { labelAt, middleOf, type Outline, outlineArea, readSelector } from '../engine/photo';
import type { WorkOnPaper } from '../engine/reckoning';
import type { Thing } from '../engine/record';
import { date, inUnit, number, unitOf, w } from '../words';
import { drawing, h, type PaperPiece } from './layout';
import { thingsIn } from './reading';

/** One side of a work: its zones in lines with their letters, and the photo they were drawn on. */
export interface View {
  readonly side: string;
  readonly photo: Thing<'photo'> | undefined;
  /** Letters of the zones that are drawn on it. */
  readonly letters: readonly string[];
  readonly drawing: PaperPiece;
}

interface Shading {
  /** Patterns and the like, once a drawing. */
  readonly defs?: PaperPiece;
  /** What a zone is filled with: "url(#hatch)"; nothing where undefined. */
  fill(zone: string): string | undefined;
  /** Drawn with a broken edge: nothing is said of it. */
  open?(zone: string): boolean;
}

const wide = 600;
const radius = 19;

/** The sides of a work that are drawn, in their order; zones that ended are left out. */
export const viewsOf = (work: WorkOnPaper, shading?: Shading): readonly View[] => {
  const living = new Map(
    work.record.zones
      .filter(({ body }) => !body.split && !body.joined)
      .map(({ thing, body }) => [thing, body.letter] as const),
  );
  const photos = new Map(thingsIn(work.within, 'photo').map((photo) => [photo.thing, photo]));
  const outlines = thingsIn(work.within, 'outline');
  return thingsIn(work.within, 'elevation')
    .sort((a, b) => a.body.order - b.body.order)
    .flatMap((elevation): View[] => {
      const zones = outlines
        .filter(({ body }) => body.elevation === elevation.thing && living.has(body.zone))
        .flatMap(({ body }) => {
          const outline = readSelector(body.target.selector.value);
          return outline ? [{ zone: body.zone, letter: living.get(body.zone) ?? '', outline }] : [];
        });
      const photo = photos.get(elevation.body.photo);
      if (zones.length === 0) return [];
      const letters = zones.map(({ letter }) => letter);
      const high = Math.round(wide * aspectOf(photo));
      const told = w.paperViews.told(elevation.body.side, letters);
      const shapes = [...zones].sort((a, b) => outlineArea(b.outline) - outlineArea(a.outline));
      return [
        {
          side: elevation.body.side,
          photo,
          letters,
          drawing: drawing(
            told,
            `0 0 ${wide} ${high}`,
            shading?.defs,
            shapes.map(({ zone, outline }) =>
              h('path', {
                d: pathOf(outline, high),
                fill: shading?.fill(zone),
                'stroke-width': 2,
                'stroke-dasharray': shading?.open?.(zone) ? '9 6' : undefined,
              }),
            ),
            shapes.map(({ letter, outline }, i) =>
              letterAt(
                letter,
                outline,
                shapes.slice(i + 1).map((other) => other.outline),
                high,
              ),
            ),
            scaleBar(elevation.body.scale, high),
          ),
        },
      ];
    });
};

/** Letters of all zones that are drawn on any side. */
export const lettersOnViews = (work: WorkOnPaper): ReadonlySet<string> =>
  new Set(viewsOf(work).flatMap(({ letters }) => letters));

const aspectOf = (photo: Thing<'photo'> | undefined): number => {
  const { width, height } = photo?.body ?? {};
  return width && height ? height / width : 1;
};

const rounded = (x: number): number => Math.round(x * 10) / 10;

const pathOf = (outline: Outline, high: number): string =>
  outline.map((ring) => `M${ring.map(([x, y]) => `${rounded(x * wide)} ${rounded(y * high)}`).join('L')}Z`).join('');

/** On a white ground, so that it can be read over lines and hatches; clear of the smaller zones that lie over it. */
const letterAt = (letter: string, outline: Outline, over: readonly Outline[], high: number): PaperPiece => {
  const [x, y] = labelAt(outline, over, { width: wide, height: high })?.at ?? middleOf(outline) ?? [0.5, 0.5];
  const [cx, cy] = [rounded(x * wide), rounded(y * high)];
  return [
    h('circle', { cx, cy, r: radius, fill: '#fff', 'stroke-width': 1 }),
    h(
      'text',
      { x: cx, y: cy, dy: '0.35em', 'text-anchor': 'middle', 'font-size': letter.length > 1 ? 19 : 25 },
      letter,
    ),
  ];
};

/** Lengths a bar may stand for, in the unit shown: the longest that takes no more than a third of the drawing. */
const bars: readonly number[] = [20, 10, 5, 2, 1, 0.5, 0.2, 0.1];

/** A bar of known length, where two places of the side were measured. It holds for their depth. */
const scaleBar = (scale: Thing<'elevation'>['body']['scale'], high: number): PaperPiece => {
  if (!scale) return undefined;
  const long = Math.hypot((scale.b[0] - scale.a[0]) * wide, (scale.b[1] - scale.a[1]) * high);
  const ofUnit = long / inUnit('length', scale.metres);
  const bar = bars.find((each) => each * ofUnit <= wide / 3);
  if (!bar || ofUnit <= 0) return undefined;
  const [from, to, y] = [12, rounded(12 + bar * ofUnit), high - 16];
  return [
    h('path', { d: `M${from} ${y - 6}v12M${from} ${y}H${to}M${to} ${y - 6}v12`, 'stroke-width': 2 }),
    h('text', { x: to + 8, y, dy: '0.35em', 'font-size': 22 }, `${number(bar, 1)} ${unitOf('length')}`),
  ];
};

/** Photo and drawing of each side beside each other. */
export const viewsBeside = (work: WorkOnPaper, shading?: Shading): readonly PaperPiece[] =>
  viewsOf(work, shading).map(({ side, photo, drawing: lines }) =>
    h(
      'div',
      { class: 'pictures pair views' },
      photo &&
        h(
          'figure',
          {},
          { picture: photo.body.sha256, alt: w.paperViews.photo(side) },
          h('figcaption', {}, w.paperViews.photoOf(side, photo.body.taken ? date(photo.body.taken.slice(0, 10)) : '')),
        ),
      h('figure', {}, lines, h('figcaption', {}, w.paperViews.drawn(side))),
    ),
  );
