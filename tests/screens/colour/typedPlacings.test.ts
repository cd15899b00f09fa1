import { describe, expect, it } from 'vitest';
import { placingsText, typedPlacings } from '../../../src/screens/colour/typedPlacings';

const one = { L: 32.1, a: -4.2, b: 9.8 };

describe('figures of placings as they are typed or pasted', () => {
  it.each([
    ['32.1 -4.2 9.8'],
    ['32,1 -4,2 9,8'],
    ['32,1; −4,2; 9,8'],
    ['32.1\t-4.2\t9.8'],
    ['32.1, -4.2, 9.8'],
    ['32,1, -4,2, 9,8'],
    ['32.1,-4.2,9.8'],
    ['  32.1   –4.2 +9.8  '],
    ['L* 32.1 a* -4.2 b* 9.8'],
    ['L*=32.1 a*=-4.2 b*=9.8'],
    ['L:32,1  a:-4,2  b:9,8'],
  ])('“%s” is one placing', (text) => {
    expect(typedPlacings(text)).toEqual({ values: [one] });
  });

  it('takes a line for each placing and none for an empty line', () => {
    expect(typedPlacings('32.1 -4.2 9.8\n\n31.8 -4.4 9.1\n').values).toHaveLength(2);
    expect(typedPlacings('').values).toEqual([]);
  });

  it.each([
    ['32.1 -4.2', 1],
    ['32.1 -4.2 9.8 1.0', 1],
    ['32.1 -4.2 9.8\n32.1 -4.2 9..8', 2],
    ['32.1 -4.2 9.8\n\nthree', 3],
    ['32 1 -4 2 9 8', 1],
  ])('“%s” names the line that is not three figures', (text, line) => {
    expect(typedPlacings(text).wrong).toEqual({ line, why: 'not three' });
  });

  it('finds a lost comma and a lost sign, rather than keeping a colour no surface has', () => {
    expect(typedPlacings('321 -4.2 9.8').wrong).toEqual({ line: 1, why: 'out of range' });
    expect(typedPlacings('-32.1 -4.2 9.8').wrong).toEqual({ line: 1, why: 'out of range' });
    expect(typedPlacings('32.1 -420 9.8').wrong).toEqual({ line: 1, why: 'out of range' });
  });

  it('comes back from what it wrote', () => {
    const values = [one, { L: 31, a: 0, b: -0.25 }];
    expect(typedPlacings(placingsText(values))).toEqual({ values });
  });
});
