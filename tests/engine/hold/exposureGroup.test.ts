import fc from 'fast-check';
import { expect, it } from 'vitest';
import { codesOfGroup, groupOf } from '../../../src/engine/hold';
import { exposures } from '../../../src/engine/trade';

it.each([
  [['up', 'open'], 'up / open'],
  [['up', 'vertical', 'open'], 'up / open'],
  [['handled', 'recess'], 'recess / handled'],
  [['vertical', 'drip'], 'vertical / drip'],
  [['vertical', 'open', 'sprinkler'], 'vertical / sprinkler'],
  [['recess'], 'recess / not said'],
  [['sheltered'], 'not said / sheltered'],
  [[], 'not said'],
  [['birds', 'moon side'], 'not said'],
])('%j belongs to %j', (codes, group) => {
  expect(groupOf(codes)).toBe(group);
});

it('does not hang on the order the codes were touched in', () => {
  const ids = exposures.map(({ id }) => id);
  fc.assert(
    fc.property(fc.shuffledSubarray(ids), fc.integer(), (codes, turn) => {
      const turned = [...codes].sort((a, b) => ((a.length * turn) % 7) - ((b.length * turn) % 7));
      expect(groupOf(turned)).toBe(groupOf(codes));
      expect(codesOfGroup(groupOf(codes)).join(' / ') || 'not said').toBe(groupOf(codes));
    }),
  );
});
