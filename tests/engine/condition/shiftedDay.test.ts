import { expect, it } from 'vitest';
import { type Coverage, scoreZone } from '../../../src/engine/condition';
import { onShiftedDay } from '../../../src/engine/condition/shiftedDay';
import { kinds, scaleOf } from '../../../src/engine/trade';
import { seeded } from '../../files/seeded';
import { findingBody, findingThings, stepOf, visitThing, zoneThing } from './madeUp';

const draw = seeded(12);
const steps = ['0', '<1', '3', '10', '40', '90+'];
const methods = ['ladder', 'ladder, adjusted', 'dots', 'traced', 'photo'] as const;

const coverage = (): Coverage => {
  const { value, low, high } = stepOf(draw.pick(steps));
  return { value, low, high, method: draw.pick(methods) };
};
const finding = () => {
  const { id, measure } = draw.pick(kinds);
  return findingBody(id, {
    severity: draw.pick(['slight', 'moderate', 'severe'] as const),
    activity: draw.pick(['active', 'unclear', 'stable'] as const),
    origin: draw.pick(['metal', 'metal', 'stain', 'dirt'] as const),
    ...(measure === 'area' && draw.below(5) > 0 ? { coverage: coverage() } : {}),
    ...(measure === 'count' ? { count: draw.pick(['one', 'more'] as const) } : {}),
    ...(draw.below(8) === 0 ? { cleared: true as const } : {}),
  });
};

it('gives a zone the figures that scoring it with every eye shifted gives', () => {
  for (let run = 0; run < 400; run++) {
    const made = { zone: 'A', findings: Array.from({ length: 1 + draw.below(4) }, finding) };
    const seen = { visit: visitThing(made), findings: findingThings(made), zone: zoneThing('A', 2), day: '2026-05-12' };
    const plain = scoreZone(seen, scaleOf(null));
    for (const shift of [-0.25, 0, 0.25, 1]) {
      const slow = scoreZone(seen, scaleOf(null), { dayShift: shift });
      const quick = plain && onShiftedDay(plain, shift);
      expect(quick?.value, `run ${run}`).toBeCloseTo(slow?.value ?? Number.NaN, 9);
      for (const what of ['green', 'bare', 'scale'] as const)
        expect(quick?.active[what].value).toBeCloseTo(slow?.active[what].value ?? Number.NaN, 9);
    }
  }
});
