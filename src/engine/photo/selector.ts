import type { Outline, Point, Ring } from './point';

const head = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1 1" preserveAspectRatio="none">';
const tail = '</svg>';

/** A hundred-thousandth of the picture: a twentieth of a pixel of the largest photo kept. */
const places = 5;

const written = (x: number): string => String(Number(Math.min(1, Math.max(0, x)).toFixed(places)));

/** The outline as the value of a Web Annotation SvgSelector (W3C 2017, 4.2.6). Rings of fewer than three points are left out. */
export const writeSelector = (outline: Outline): string =>
  head +
  outline
    .filter((ring) => ring.length >= 3)
    .map((ring) => `<polygon points="${ring.map((p) => p.map(written).join(',')).join(' ')}"/>`)
    .join('') +
  tail;

const polygon = /<polygon points="([0-9eE.,+\- ]*)"\s*\/>/y;

/**
 * The outline in a selector of our own writing; undefined where it is any other SVG, or a point lies outside the picture.
 * The text is never given to a browser as SVG.
 */
export const readSelector = (value: string): Outline | undefined => {
  if (!value.startsWith(head) || !value.endsWith(tail)) return undefined;
  const inside = value.slice(head.length, -tail.length);
  const rings: Ring[] = [];
  polygon.lastIndex = 0;
  for (let at = 0; at < inside.length; at = polygon.lastIndex) {
    const points = polygon.exec(inside)?.[1]?.trim().split(/\s+/).map(pointOf);
    if (!points || points.length < 3 || points.some((p) => p === undefined)) return undefined;
    rings.push(points as Point[]);
  }
  return rings;
};

const pointOf = (pair: string): Point | undefined => {
  const [x, y, ...more] = pair.split(',').map(Number);
  const inside = (n: number | undefined): n is number => n !== undefined && n >= 0 && n <= 1;
  return more.length === 0 && inside(x) && inside(y) ? [x, y] : undefined;
};
