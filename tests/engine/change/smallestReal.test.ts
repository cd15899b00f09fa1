import { describe, expect, test } from 'vitest';
import { thenAndNow } from '../../../src/engine/change';
import { smallestReal } from '../../../src/engine/change/smallestReal';
import { invented, pairOf, roundName } from './invented';

const percent = (share: number | null | undefined): number | null =>
  share === null || share === undefined ? null : Math.round(share * 1000) / 10;

const smallest = (record: ReturnType<typeof pairOf>) =>
  thenAndNow(record, roundName(0), roundName(1)).findings[0]?.smallest;

describe('the smallest difference that would be called real', () => {
  test('with the error of the eye alone (0.30 on the logit, both times) 20 % must fall to 9.8 % or rise to 36.5 %', () => {
    // 1.96 x 0.30 x sqrt 2 = 0.8316 on the logit; the logit of 0.2 is -1.3863.
    const eyeAlone = (p: number) => ({ p, sd: 0.3, byEye: 0 });
    const reach = smallestReal(eyeAlone(0.2), eyeAlone, false);
    expect(percent(reach.down)).toBe(9.8);
    expect(percent(reach.up)).toBe(36.5);
  });

  test('with the whole rule (half a point, the bin of the ladder, the day both times) it is 8.0 % and 40.4 %', () => {
    const reach = smallest(pairOf([{ cover: 0.2 }], [{ cover: 0.2 }]));
    expect([percent(reach?.down), percent(reach?.up)]).toEqual([8, 40.4]);
  });

  test('another person widens it', () => {
    const same = smallest(pairOf([{ cover: 0.2 }], [{ cover: 0.2 }]));
    const other = smallest(pairOf([{ cover: 0.2 }], [{ cover: 0.2 }], { surveyor: 'surveyor/stand-in' }));
    expect(other?.down).toBeLessThan(same?.down ?? 0);
    expect(other?.up).toBeGreaterThan(same?.up ?? 1);
  });

  test('from 3 % no smaller coverage anybody could enter would be called real', () => {
    expect(smallest(pairOf([{ cover: 0.03 }], [{ cover: 0.03 }]))?.down).toBeNull();
  });

  test('from 70 % no larger one would', () => {
    expect(smallest(pairOf([{ cover: 0.7 }], [{ cover: 0.9 }]))?.up).toBeNull();
  });

  test('a traced coverage asks for less than one by eye', () => {
    const traced = { cover: 0.2, method: 'traced', range: [0.2, 0.2] } as const;
    const eye = smallest(pairOf([{ cover: 0.2 }], [{ cover: 0.2 }]));
    const drawn = smallest(pairOf([traced], [traced]));
    expect(drawn?.up).toBeLessThan(eye?.up ?? 0);
  });

  test('carried findings have none, there is nothing to stand on', () => {
    const record = invented({
      zones: { A: {} },
      rounds: [
        { date: '2025-05-10', saw: { A: [{ cover: 0.2 }] } },
        { date: '2026-05-10', saw: { A: 'carried' } },
      ],
    });
    expect(smallest(record)).toBeNull();
  });
});
