import { describe, expect, it } from 'vitest';
import { areaFrom, draftFrom, newPart } from '../../../src/screens/sculptures/areaDraft';
import { asksForHomeScreen } from '../../../src/screens/sculptures/homeScreen';

const typed = (text: string, sure = 'measured') => areaFrom({ method: 'typed', typed: text, sure, parts: [] });

describe('An area as it is typed', () => {
  it('takes a comma for a point and carries how sure it is as its range', () => {
    expect(typed('1,5')).toMatchObject({ m2: 1.5, method: 'typed' });
    expect(typed('1.5', 'guessed')).toMatchObject({ low: 0.75, high: 2.25 });
  });

  it.each(['', '0', '-1', '1.2.3', 'about 2', '1e3', 'NaN', 'Infinity'])('is no area: %j', (text) => {
    expect(typed(text)).toBeUndefined();
  });

  it('is none while one size of one shape is missing', () => {
    const whole = { ...newPart(0, 'cylinder'), sizes: ['0.4', '1'] };
    const half = { ...newPart(1, 'disc'), sizes: [''] };
    expect(areaFrom({ method: 'solids', typed: '', sure: 'measured', parts: [whole] })?.m2).toBeCloseTo(Math.PI * 0.4);
    expect(areaFrom({ method: 'solids', typed: '', sure: 'measured', parts: [whole, half] })).toBeUndefined();
  });

  it('counts only the share of a shape that is in the zone, and no more than all of it', () => {
    const disc = (share: string) => ({ ...newPart(0, 'disc'), sizes: ['2'], share });
    const from = (share: string) => areaFrom({ method: 'solids', typed: '', sure: 'measured', parts: [disc(share)] });
    expect(from('50')?.m2).toBeCloseTo(Math.PI / 2);
    expect(from('120')).toBeUndefined();
  });

  it('comes back from what is kept as it was typed', () => {
    const kept = typed('2.4', 'estimated');
    expect(areaFrom(draftFrom(kept))).toEqual(kept);
    const parts = [{ ...newPart(0, 'strip'), sizes: ['0.8', '1.5'], share: '40' }];
    const strips = areaFrom({ method: 'strips', typed: '', sure: 'measured', parts });
    expect(areaFrom(draftFrom(strips))).toEqual(strips);
  });

  it('of a thousand square metres and more survives being edited', () => {
    expect(areaFrom(draftFrom(typed('1234.5')))?.m2).toBe(1234.5);
  });
});

describe('The Home Screen', () => {
  const mac = 'Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7)';
  it('is asked for on an iPad in a tab, which calls itself a Mac, and on no Mac, and not once installed', () => {
    expect(asksForHomeScreen({ userAgent: mac, maxTouchPoints: 5 }, false)).toBe(true);
    expect(asksForHomeScreen({ userAgent: mac, maxTouchPoints: 0 }, false)).toBe(false);
    expect(asksForHomeScreen({ userAgent: mac, maxTouchPoints: 5 }, true)).toBe(false);
    expect(asksForHomeScreen({ userAgent: 'Mozilla/5.0 (Linux; Android 15)', maxTouchPoints: 5 }, false)).toBe(false);
  });
});
