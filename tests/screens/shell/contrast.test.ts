import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const css = readFileSync('src/screens/shell/tokens.css', 'utf8');

/** The custom properties of a rule, by the words its selector holds. */
const tokensOf = (selector: RegExp): Record<string, string> => {
  const block = css.split('}').find((rule) => selector.test(rule.split('{')[0] ?? '')) ?? '';
  return Object.fromEntries(
    [...block.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6});/g)].map(([, name, value]) => [name, value]),
  );
};

const light = tokensOf(/data-theme=.light/);
const sun = { ...light, ...tokensOf(/data-theme=.sun/) };

/** Relative luminance and contrast after WCAG 2.2, sections "relative luminance" and "contrast ratio". */
const luminance = (hex: string): number => {
  const [r = 0, g = 0, b = 0] = [1, 3, 5]
    .map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255)
    .map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};
const contrast = (a: string | undefined, b: string | undefined): number => {
  const [dark = 0, bright = 0] = [luminance(a ?? ''), luminance(b ?? '')].sort((x, y) => x - y);
  return (bright + 0.05) / (dark + 0.05);
};
/** CIE L*, 0 to 100. */
const lightness = (hex: string | undefined): number => 116 * Math.cbrt(luminance(hex ?? '')) - 16;

const grounds = ['paper', 'card', 'note-wash', 'accent-wash', 'danger-wash', 'caution-wash'];

describe('Colours indoors', () => {
  it.each(grounds)('text on %s has at least 7:1', (ground) => {
    for (const text of ['ink', 'ink-soft'])
      expect(contrast(light[text], light[ground]), text).toBeGreaterThanOrEqual(7);
  });

  it('coloured words have at least 7:1 where they stand', () => {
    for (const [text, ground] of [
      ['accent', 'paper'],
      ['accent', 'card'],
      ['danger', 'danger-wash'],
      ['danger', 'paper'],
      ['caution', 'caution-wash'],
      ['on-accent', 'accent'],
    ] as const)
      expect(contrast(light[text], light[ground]), `${text} on ${ground}`).toBeGreaterThanOrEqual(7);
  });

  it('lines of controls have at least 4.5:1', () => {
    for (const ground of ['paper', 'card']) expect(contrast(light.line, light[ground])).toBeGreaterThanOrEqual(4.5);
  });
});

describe('Colours in the sun', () => {
  it('text has at least 15:1, coloured words at least 7:1', () => {
    for (const ground of grounds) {
      for (const text of ['ink', 'ink-soft']) expect(contrast(sun[text], sun[ground]), text).toBeGreaterThanOrEqual(15);
      for (const text of ['danger', 'caution', 'accent'])
        expect(contrast(sun[text], sun[ground])).toBeGreaterThanOrEqual(7);
    }
  });

  it('lines have at least 7:1, and there is no grey between', () => {
    for (const line of ['line', 'hair']) expect(contrast(sun[line], sun.paper)).toBeGreaterThanOrEqual(7);
  });
});

describe('The index scale', () => {
  const steps = [1, 2, 3, 4, 5].map((n) => light[`index-${n}`]);

  it('falls strictly in lightness, so that grey print and colour-blind eyes read it', () => {
    const falls = steps.slice(1).map((step, i) => lightness(steps[i]) - lightness(step));
    expect(Math.min(...falls)).toBeGreaterThan(10);
  });

  it('has no green in it: green is what bronze does when it is ill', () => {
    for (const step of steps) {
      const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => Number.parseInt((step ?? '').slice(at, at + 2), 16));
      expect(g, step).toBeLessThan(Math.max(r, b));
    }
  });

  it('has hatching that can be told from its ground, in the sun too', () => {
    for (const theme of [light, sun]) {
      for (const n of [2, 3])
        expect(contrast(theme[`index-${n}`], theme['index-mark-pale'])).toBeGreaterThanOrEqual(4.5);
      for (const n of [4, 5])
        expect(contrast(theme[`index-${n}`], theme['index-mark-dark'])).toBeGreaterThanOrEqual(4.5);
    }
  });
});
