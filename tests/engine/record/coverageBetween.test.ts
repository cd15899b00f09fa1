import { describe, expect, it } from 'vitest';
import { coverageBetween } from '../../../src/engine/record/coverageBetween';
import { startDraft } from '../../../src/engine/record/zoneDraft';
import { draftFrom } from '../../../src/engine/record/zoneDraftTouch';
import { ladder } from '../../../src/engine/trade';

const inner = ladder.filter((s) => s.value > 0);

describe('a value between two steps of the ladder', () => {
  it.each(inner.map((s) => [s.label, s] as const))(
    'stays inside the bin of %s %%, both ways, and ends there',
    (_, s) => {
      for (const by of [-1, 1] as const) {
        let at = { value: s.value, low: s.low, high: s.high, method: 'ladder' as const } as Parameters<
          typeof coverageBetween
        >[0];
        let moves = 0;
        for (let next = coverageBetween(at, s.value, by); next; next = coverageBetween(at, s.value, by)) {
          expect((next.value - at.value) * by).toBeGreaterThan(0);
          expect(next).toMatchObject({ low: s.low, high: s.high, method: 'ladder, adjusted' });
          expect(next.value).toBeGreaterThan(s.low);
          expect(next.value).toBeLessThan(s.high);
          at = next;
          moves += 1;
        }
        expect(moves).toBe(2);
        const back = coverageBetween(at, s.value, by === 1 ? -1 : 1);
        expect(back && coverageBetween(back, s.value, by === 1 ? -1 : 1)).toMatchObject({
          value: s.value,
          method: 'ladder',
        });
      }
    },
  );

  it('does not shift what was measured another way', () => {
    expect(coverageBetween({ value: 0.1, low: 0.08, high: 0.12, method: 'dots' }, 0.1, 1)).toBeUndefined();
  });

  it('is a touch of its own: one touch less is the step as it was chosen', () => {
    const draft = startDraft({
      sculpture: 'sculpture/s',
      round: 'round/r',
      zone: 'zone/a',
      zoneVersion: 1,
      ownEye: false,
      earlier: [],
    });
    const chosen = draftFrom(draft, [
      { do: 'kind', kind: 'green-spots', measure: 'area' },
      { do: 'origin', origin: 'metal' },
      { do: 'cover', coverage: { value: 0.1, low: 0.075, high: 0.125, method: 'ladder' } },
    ]);
    const more = draftFrom(chosen, [{ do: 'cover between', step: 0.1, by: 1 }]);
    expect(chosen.findings[0]?.coverage?.value).toBe(0.1);
    expect(more.findings[0]?.coverage).toEqual({ value: 0.10833, low: 0.075, high: 0.125, method: 'ladder, adjusted' });
    expect(more.touches).toBe(chosen.touches + 1);
    expect(more.open).toBe(chosen.open);
  });
});
