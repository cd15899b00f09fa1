import { describe, expect, it } from 'vitest';
import { contrast, luminance, rgbOf, themes } from '../files/colourTokens';

/**
 * Every colour of tokens.css has one part and is held to that part's line against every ground it may stand on. In the sun: text 15:1,
 * lines and controls 7:1, the product's own lines. Indoors: 7:1 for text (WCAG 2.2, 1.4.6 at level AAA), 3:1 for what tells a control
 * (1.4.11); hairlines that only part things tell nothing.
 */
const parts = {
  ground: ['paper', 'card', 'sunk', 'accent-wash', 'danger-wash', 'caution-wash', 'note-wash'],
  text: ['ink', 'ink-soft', 'danger', 'caution'],
  /** Words and controls: never on the sunk ground nor on its own wash indoors in small text. */
  accent: ['accent'],
  'on accent': ['on-accent'],
  line: ['line'],
  hairline: ['hair'],
  scale: ['index-1', 'index-2', 'index-3', 'index-4', 'index-5', 'index-none'],
  'on scale': ['index-mark-pale', 'index-mark-dark'],
  'on photo': ['on-photo-pale', 'on-photo-dark', 'on-photo-chosen'],
  /** Pictures of bronze: nothing is read off them but the shape, which has a line of its own. */
  drawn: ['bronze', 'bronze-green', 'bronze-line', 'bronze-sound'],
} as const;

const of = (theme: keyof typeof themes, name: string): string => themes[theme][name] ?? '';
const least = (theme: keyof typeof themes, name: string, grounds: readonly string[]): number =>
  Math.min(...grounds.map((ground) => contrast(of(theme, name), of(theme, ground))));

it('finds black on white at 21 to 1 and a colour on itself at 1, as WCAG 2.2 says', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10);
  expect(contrast('#6a4120', '#6a4120')).toBe(1);
});

it('knows what each colour of the product is for', () => {
  expect(Object.keys(themes.sun).sort()).toEqual(Object.values(parts).flat().sort());
});

it('what is drawn over a photo stands out from its own casing, whatever lies under it', () => {
  for (const pale of ['on-photo-pale', 'on-photo-chosen'])
    expect(contrast(of('light', pale), of('light', 'on-photo-dark'))).toBeGreaterThanOrEqual(7);
  for (const ground of ['bronze', 'bronze-line'])
    expect(contrast(of('light', 'bronze-green'), of('light', ground))).toBeGreaterThanOrEqual(7);
});

describe('Indoors', () => {
  it.each(parts.text)('%s has at least 7:1 on every ground', (text) => {
    expect(least('light', text, parts.ground)).toBeGreaterThanOrEqual(7);
  });

  it('coloured words have at least 7:1 on paper and card, and 4.5:1 where they are washed over', () => {
    expect(
      least('light', 'accent', ['paper', 'card', 'danger-wash', 'caution-wash', 'note-wash']),
    ).toBeGreaterThanOrEqual(7);
    expect(least('light', 'accent', parts.ground)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(of('light', 'on-accent'), of('light', 'accent'))).toBeGreaterThanOrEqual(7);
  });

  it('lines of controls have at least 4.5:1 on paper and card, and 3:1 everywhere', () => {
    expect(least('light', 'line', ['paper', 'card'])).toBeGreaterThanOrEqual(4.5);
    expect(least('light', 'line', parts.ground)).toBeGreaterThanOrEqual(3);
  });
});

describe('In the sun', () => {
  it.each([...parts.text, ...parts.accent])('%s has at least 15:1 on every ground', (text) => {
    expect(least('sun', text, parts.ground)).toBeGreaterThanOrEqual(15);
  });

  it('words on a main button have at least 15:1', () => {
    expect(contrast(of('sun', 'on-accent'), of('sun', 'accent'))).toBeGreaterThanOrEqual(15);
  });

  it.each([...parts.line, ...parts.hairline])(
    '%s has at least 7:1 on every ground: there is no grey between',
    (line) => {
      expect(least('sun', line, parts.ground)).toBeGreaterThanOrEqual(7);
    },
  );
});

describe('The index scale', () => {
  const steps = [1, 2, 3, 4, 5].map((n) => of('light', `index-${n}`));
  /** CIE L*, 0 to 100. */
  const lightness = (hex: string): number => 116 * Math.cbrt(luminance(hex)) - 16;

  it('falls strictly in lightness, so that grey print and colour-blind eyes read it', () => {
    const falls = steps.slice(1).map((step, i) => lightness(steps[i]!) - lightness(step));
    expect(Math.min(...falls)).toBeGreaterThan(10);
  });

  it('has no green in it: green is what bronze does when it is ill', () => {
    for (const step of steps) {
      const [r, g, b] = rgbOf(step);
      expect(g, step).toBeLessThan(Math.max(r, b));
    }
  });

  it.each(['light', 'sun'] as const)('has hatching that can be told from its ground, %s theme', (theme) => {
    for (const n of [2, 3])
      expect(contrast(of(theme, `index-${n}`), of(theme, 'index-mark-pale'))).toBeGreaterThanOrEqual(4.5);
    for (const n of [4, 5])
      expect(contrast(of(theme, `index-${n}`), of(theme, 'index-mark-dark'))).toBeGreaterThanOrEqual(4.5);
  });
});
