// @vitest-environment jsdom
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Outline, readSelector, writeSelector } from '../../../src/engine/photo';

const fraction = fc.double({ min: 0, max: 1, noNaN: true });
const ring = fc.array(fc.tuple(fraction, fraction), { minLength: 3, maxLength: 40 });
const outlines = fc.array(ring, { maxLength: 6 });

test('an outline comes back from its selector to a hundred-thousandth of the picture', () => {
  fc.assert(
    fc.property(outlines, (outline) => {
      const back = readSelector(writeSelector(outline));
      expect(back?.map((r) => r.length)).toEqual(outline.map((r) => r.length));
      for (const [i, points] of outline.entries())
        for (const [j, [x, y]] of points.entries()) {
          expect(Math.abs(back![i]![j]![0] - x)).toBeLessThanOrEqual(5.0001e-6);
          expect(Math.abs(back![i]![j]![1] - y)).toBeLessThanOrEqual(5.0001e-6);
        }
    }),
  );
});

test('what is written once is written the same again', () => {
  fc.assert(
    fc.property(outlines, (outline) => {
      const once = writeSelector(outline);
      expect(writeSelector(readSelector(once)!)).toBe(once);
    }),
  );
});

test('another program finds the polygons in it: it is SVG, and its view box is the whole picture', () => {
  const triangle: Outline = [
    [
      [0.1, 0.2],
      [0.6, 0.2],
      [0.6, 0.9],
    ],
  ];
  const read = new DOMParser().parseFromString(writeSelector(triangle), 'image/svg+xml').documentElement;
  expect(read.namespaceURI).toBe('http://www.w3.org/2000/svg');
  expect(read.getAttribute('viewBox')).toBe('0 0 1 1');
  expect(read.querySelector('polygon')?.getAttribute('points')).toBe('0.1,0.2 0.6,0.2 0.6,0.9');
});

const whole = writeSelector([
  [
    [0, 0],
    [1, 0],
    [1, 1],
  ],
]);
test.each([
  ['nothing', ''],
  ['a script', whole.replace('</svg>', '<script>alert(1)</script></svg>')],
  ['a handler', whole.replace('<polygon', '<polygon onload="alert(1)"')],
  ['a picture from elsewhere', whole.replace('</svg>', '<image href="https://elsewhere.invalid/a.png"/></svg>')],
  ['a point outside the picture', whole.replace('1,1', '1.5,1')],
  ['two points', whole.replace(' 1,1', '')],
  ['a word for a number', whole.replace('1,1', 'e,1')],
  ['three numbers', whole.replace('1,1', '1,1,1')],
  ['another view box', whole.replace('0 0 1 1', '0 0 100 100')],
  ['a path', '<svg xmlns="http://www.w3.org/2000/svg"><path d="M0 0L1 1"/></svg>'],
])('%s is no outline of ours', (_, value) => {
  expect(readSelector(value)).toBeUndefined();
});
