import { describe, expect, it } from 'vitest';
import { decisionRefused, dueAnswerRefused, taskRefused, tripwireAnswerRefused } from '../../../src/engine/watch';
import { decision, wire, zoneA } from './planned';

const refused = (more: Parameters<typeof decision>[0]) => decisionRefused(decision(more).body, 'decision/d1')?.code;
const signedOn = (on: string) => [{ role: 'Board', on }];

describe('what is refused before it is kept', () => {
  it('a decision with days out of order, without a title, or in its own place', () => {
    expect(refused({})).toBeUndefined();
    expect(refused({ title: ' ' })).toBe('watch: title missing');
    expect(refused({ review: '2024-11-19' })).toBe('watch: review before decision');
    expect(refused({ review: '2024-11-20', signed: signedOn('2024-11-20') })).toBeUndefined();
    expect(refused({ signed: signedOn('2024-11-19') })).toBe('watch: signed before decision');
    expect(refused({ replacedBy: 'decision/d1' })).toBe('watch: replaced by itself');
  });

  it('a tripwire that could never be told: without its zone, level or day, or with an absurd level', () => {
    const of = (...tripwires: ReturnType<typeof wire>[]) => refused({ tripwires });
    expect(of(wire('hold over', { level: 6 }))).toBe('watch: tripwire incomplete');
    expect(of(wire('hold over', { zone: zoneA }))).toBe('watch: tripwire incomplete');
    expect(of(wire('day comes'))).toBe('watch: tripwire incomplete');
    expect(of(wire('green share over', { zone: zoneA, level: 130 }))).toBe('watch: tripwire level');
    expect(of(wire('fund reaches', { level: -5 }))).toBe('watch: tripwire level');
    expect(of(wire('stop word'), wire('surely worse'))).toBe('watch: two tripwires of one name');
    expect(
      of(wire('hold over', { zone: zoneA, level: 6, times: 2 }), { ...wire('stop word'), id: 't2' }),
    ).toBeUndefined();
  });

  it('an answer of nobody, a "later" without a day to come, a task that ends before it begins', () => {
    const said = {
      decision: 'decision/d1',
      tripwire: 't1',
      seen: 'x',
      on: '2026-10-15',
      answer: 'keep to it',
    } as const;
    expect(tripwireAnswerRefused({ ...said, by: ' ' })?.code).toBe('watch: answer without name');
    expect(tripwireAnswerRefused({ ...said, by: 'Steward' })).toBeUndefined();
    const later = (until?: string) =>
      dueAnswerRefused({ key: 'k', on: '2026-10-15', answer: 'later', ...(until ? { until } : {}) })?.code;
    expect(later()).toBe('watch: put off without a day');
    expect(later('2026-10-15')).toBe('watch: put off to the past');
    expect(later('2026-10-16')).toBeUndefined();
    expect(taskRefused({ what: 'x', from: '2026-10-15', until: '2026-10-14' })?.code).toBe(
      'watch: task ends before it begins',
    );
  });
});
