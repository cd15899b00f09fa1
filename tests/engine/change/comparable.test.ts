import { describe, expect, test } from 'vitest';
import { comparable, firstComparable, previousComparable, thenAndNow } from '../../../src/engine/change';
import { codes, type InventedRound, invented, pairOf, roundName } from './invented';

const rounds = (list: readonly InventedRound[]) => invented({ zones: { A: {} }, rounds: list });
const seen = { A: [{ cover: 0.2 }] } as const;

describe('rounds of one kind and state may be compared', () => {
  test.each([
    [{}, []],
    [{ type: 'autumn' }, ['change: other type of round']],
    [{ washed: 'after wash' }, ['change: other washing']],
    [{ wet: 'damp' }, ['change: other wetness']],
    [
      { type: 'incident', washed: 'after wash', wet: 'wet' },
      ['change: other type of round', 'change: other washing', 'change: other wetness'],
    ],
  ] as const)('against a dry annual round before the wash, %j', (more, expected) => {
    const [a, b] = pairOf([{ cover: 0.2 }], [{ cover: 0.2 }], more).rounds;
    if (!a || !b) throw new Error('two rounds were invented');
    expect(codes(comparable(a, b).reasons)).toEqual(expected);
    expect(comparable(a, b).ok).toBe(expected.length === 0);
  });

  test('a round is not compared with itself', () => {
    const [a] = pairOf('nothing', 'nothing').rounds;
    if (!a) throw new Error('a round was invented');
    expect(codes(comparable(a, a).reasons)).toEqual(['change: same round']);
  });

  test('others are compared with a warning, and then nothing is escalated', () => {
    const t = thenAndNow(
      pairOf([{ cover: 0.05 }], [{ cover: 0.7 }], { washed: 'after wash' }),
      roundName(0),
      roundName(1),
    );
    expect(t.comparable.ok).toBe(false);
    expect(codes(t.reasons)).toEqual(['change: other washing', 'change: rounds not alike']);
    expect(t.findings[0]).toMatchObject({ verdict: 'worse', clearly: true, clearlyWorse: false });
  });

  test('a round this work does not have is an error of the caller', () => {
    expect(() => thenAndNow(pairOf('nothing', 'nothing'), 'round/none', roundName(1))).toThrow(/no round round\/none/);
  });
});

describe('the round to compare with', () => {
  test('is the latest earlier one of the same kind and state', () => {
    const record = rounds([
      { date: '2023-05-10', saw: seen },
      { date: '2024-05-10', saw: seen },
      { date: '2024-10-10', type: 'autumn', saw: seen },
      { date: '2025-05-10', saw: seen },
      { date: '2026-05-10', saw: seen },
    ]);
    expect(previousComparable(record, roundName(3)).round?.thing).toBe(roundName(1));
    expect(previousComparable(record, roundName(1)).round?.thing).toBe(roundName(0));
  });

  test('is not one in which everything was carried or not looked at', () => {
    const record = rounds([
      { date: '2024-05-10', saw: seen },
      { date: '2025-05-10', saw: { A: 'carried' } },
      { date: '2025-06-10', saw: { A: 'not looked' } },
      { date: '2025-07-10', saw: {} },
      { date: '2026-05-10', saw: seen },
    ]);
    expect(previousComparable(record, roundName(4)).round?.thing).toBe(roundName(0));
  });

  test('the first round has none, and that is said', () => {
    const previous = previousComparable(rounds([{ date: '2026-05-10', saw: seen }]), roundName(0));
    expect(previous).toEqual({ reasons: [{ code: 'change: no earlier round', params: {} }] });
  });

  test('where all earlier ones are of another kind or state, the nearest is offered with what differs', () => {
    const record = rounds([
      { date: '2025-05-10', type: 'incident', saw: seen },
      { date: '2025-10-10', wet: 'wet', saw: seen },
      { date: '2026-05-10', saw: seen },
    ]);
    const previous = previousComparable(record, roundName(2));
    expect(previous.round).toBeUndefined();
    expect(previous.instead?.thing).toBe(roundName(1));
    expect(codes(previous.reasons)).toEqual([
      'change: earlier rounds are of another kind or state',
      'change: other wetness',
    ]);
  });

  test('a round of the same day is not an earlier one', () => {
    const record = rounds([
      { date: '2026-05-10', saw: seen },
      { date: '2026-05-10', saw: seen },
    ]);
    expect(codes(previousComparable(record, roundName(1)).reasons)).toEqual(['change: no earlier round']);
  });
});

describe('the first round to compare with', () => {
  test('is the earliest of the same kind and state in which something was judged', () => {
    const record = rounds([
      { date: '2021-05-10', type: 'incident', saw: seen },
      { date: '2022-05-10', saw: { A: 'carried' } },
      { date: '2023-05-10', saw: seen },
      { date: '2025-05-10', saw: seen },
      { date: '2026-05-10', saw: seen },
    ]);
    expect(firstComparable(record, roundName(4))?.thing).toBe(roundName(2));
    expect(firstComparable(record, roundName(3))?.thing).toBe(roundName(2));
    expect(firstComparable(record, roundName(2))).toBeUndefined();
    expect(firstComparable(record, roundName(0))).toBeUndefined();
  });
});
