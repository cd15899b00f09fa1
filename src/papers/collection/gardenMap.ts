import type { PaperSource } from '../../engine/reckoning';
import { w } from '../../words';
import { drawing, h, type PaperNode, type PaperPiece } from '../layout';
import { nameOfWork, thingsIn } from '../reading';
import type { WorkInYear } from './workInYear';

const words = w.paperYear;

/** A plan without a picture is drawn on a sheet of these proportions. */
const width = 400;
const height = 260;
const margin = 22;

export type Sign = 0 | 1 | 2 | 3 | 'none';

export const signOf = ({ round, urgency }: WorkInYear): Sign => (round ? (urgency ?? 'none') : 'none');

/** A shape for each state: told apart without colour. */
export const shape = (sign: Sign, x: number, y: number, r = 8): PaperNode => {
  switch (sign) {
    case 0:
      return h('circle', { cx: x, cy: y, r, 'stroke-width': 1.5 });
    case 1:
      return h('path', {
        d: `M${x} ${y - r * 1.15}L${x + r * 1.1} ${y + r * 0.8}H${x - r * 1.1}Z`,
        'stroke-width': 1.5,
      });
    case 2:
      return h('path', {
        d: `M${x - r} ${y - r}H${x + r}V${y + r}H${x - r}ZM${x - r} ${y + r}L${x + r} ${y - r}M${x - r} ${y}L${x} ${y - r}M${x} ${y + r}L${x + r} ${y}`,
        'stroke-width': 1.5,
      });
    case 3:
      return h('path', {
        d: `M${x} ${y - r * 1.25}L${x + r * 1.25} ${y}L${x} ${y + r * 1.25}L${x - r * 1.25} ${y}Z`,
        fill: '#000',
      });
    case 'none':
      return h('circle', { cx: x, cy: y, r, 'stroke-width': 1.5, 'stroke-dasharray': '4 3' });
  }
};

/** Where each work stands, by the plan of the site; undefined where no plan places any. */
export const gardenMap = ({ around }: PaperSource, works: readonly WorkInYear[]): PaperPiece => {
  const plan = thingsIn(around, 'sitePlan')[0]?.body;
  const spots = works.flatMap((one) => {
    const spot = plan?.spots.find(({ work }) => work === one.work.record.sculpture.thing);
    return spot ? [{ one, x: margin + spot.x * (width - 2 * margin), y: margin + spot.y * (height - 2 * margin) }] : [];
  });
  if (spots.length === 0) return undefined;
  const told = words.mapTold(
    spots.map(({ one }) => words.row(nameOfWork(one.work), words.short[signOf(one)])).join(' '),
  );
  const start = plan?.start;
  return drawing(
    told,
    `0 0 ${width} ${height}`,
    h('rect', { x: 1, y: 1, width: width - 2, height: height - 2 }),
    start && startOf(margin + start.x * (width - 2 * margin), margin + start.y * (height - 2 * margin), start.words),
    ...spots.flatMap(({ one, x, y }): PaperPiece[] => {
      const left = x > width * 0.75;
      const label = one.work.record.sculpture.body.number || one.work.record.sculpture.body.title;
      return [
        shape(signOf(one), x, y),
        h('text', { x: left ? x - 14 : x + 14, y: y + 5, 'text-anchor': left ? 'end' : 'start' }, label),
      ];
    }),
  );
};

/** Where the walk begins: a cross, its words at the lower edge, where no work's number stands. */
const startOf = (x: number, y: number, said = ''): PaperPiece => [
  h('path', { d: `M${x - 5} ${y - 5}L${x + 5} ${y + 5}M${x - 5} ${y + 5}L${x + 5} ${y - 5}` }),
  h('text', { x: 8, y: height - 8, 'font-size': 11 }, `× ${said}`),
];

/** What each shape that is used stands for. */
export const keyOfSigns = (works: readonly WorkInYear[]): PaperPiece => {
  const used = ([0, 1, 2, 3, 'none'] as const).filter((sign) => works.some((one) => signOf(one) === sign));
  return h('p', { class: 'small sign-key' }, ...used.map((sign) => h('span', {}, smallSign(sign), words.signs[sign])));
};

export const smallSign = (sign: Sign): PaperNode =>
  h('svg', { class: 'sign', viewBox: '0 0 24 24', 'aria-hidden': 'true' }, shape(sign, 12, 12));
