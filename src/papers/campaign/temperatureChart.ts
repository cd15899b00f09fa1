import type { TemperatureLog } from '../../engine/heat';
import { measure, w, whole } from '../../words';
import { drawing, h, type PaperPiece } from '../layout';

const words = w.paperDossier;

const wide = 640;
const high = 240;
const edge = { left: 56, right: 16, top: 16, bottom: 34 };
/** Degrees Celsius between two lines of the drawing. */
const step = 10;
/** Minutes between two marks of time. */
const mark = 15;

/** Readings at an insert over the day as points joined by lines, under the line of its limit. */
export const temperatureChart = (
  name: string,
  { rows, highest }: TemperatureLog,
  limit: number | undefined,
): PaperPiece => {
  const times = rows.map(({ minute }) => minute);
  const [first, last] = [Math.min(...times), Math.max(...times)];
  if (rows.length < 2 || first === last) return undefined;
  const top = Math.ceil((Math.max(...rows.map(({ celsius }) => celsius), limit ?? 0) + 1) / step) * step;
  const bottom = Math.floor(Math.min(0, ...rows.map(({ celsius }) => celsius)) / step) * step;
  const x = (minute: number) =>
    round(edge.left + ((minute - first) / (last - first)) * (wide - edge.left - edge.right));
  const y = (degrees: number) =>
    round(high - edge.bottom - ((degrees - bottom) / (top - bottom)) * (high - edge.top - edge.bottom));
  const levels = range(bottom, top, step * Math.ceil((top - bottom) / step / 7));
  const spots = [...new Set(rows.map(({ spot }) => spot))];
  return drawing(
    words.chart(name, whole(rows.length), highest ? measure('temperature', highest.celsius) : ''),
    `0 0 ${wide} ${high}`,
    levels.map((degrees) => [
      degrees !== limit && h('path', { d: `M${edge.left} ${y(degrees)}H${wide - edge.right}`, 'stroke-width': 0.4 }),
      h(
        'text',
        { x: edge.left - 8, y: y(degrees), dy: '0.35em', 'text-anchor': 'end', 'font-size': 12 },
        measure('temperature', degrees),
      ),
    ]),
    range(Math.ceil(first / mark) * mark, last, mark).map((minute) => [
      h('path', { d: `M${x(minute)} ${high - edge.bottom}v5` }),
      h('text', { x: x(minute), y: high - edge.bottom + 20, 'text-anchor': 'middle', 'font-size': 12 }, clock(minute)),
    ]),
    limit !== undefined && [
      h('path', { d: `M${edge.left} ${y(limit)}H${wide - edge.right}`, 'stroke-width': 2, 'stroke-dasharray': '8 5' }),
      h(
        'text',
        { x: wide - edge.right, y: y(limit) - 6, 'text-anchor': 'end', 'font-size': 12 },
        words.chartLimit(measure('temperature', limit)),
      ),
    ],
    spots.map((spot, i) => {
      const own = rows.filter((row) => row.spot === spot);
      const line = own.map(({ minute, celsius }) => `${x(minute)} ${y(celsius)}`).join('L');
      return [
        h('path', { d: `M${line}`, 'stroke-width': 1.5, 'stroke-dasharray': i === 0 ? undefined : `${2 + 3 * i} 4` }),
        own.map(({ minute, celsius }) => h('circle', { cx: x(minute), cy: y(celsius), r: 3.5, fill: '#000' })),
      ];
    }),
  );
};

const round = (value: number): number => Math.round(value * 10) / 10;

const range = (from: number, to: number, by: number): readonly number[] =>
  Array.from({ length: Math.max(0, Math.floor((to - from) / by) + 1) }, (_, i) => from + i * by);

const clock = (minute: number): string =>
  `${String(Math.floor(minute / 60) % 24).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;
