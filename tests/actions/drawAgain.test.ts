import { describe, expect, it } from 'vitest';
import { canBeAskedAgain, drawAgain } from '../../src/actions/round/drawAgain';
import type { SculptureRecord, Thing } from '../../src/engine/record';

const zone = (id: string, reach = 'ground') => ({ thing: `zone/${id}`, body: { reach } }) as unknown as Thing<'zone'>;
const finding = (id: string, over: object = {}) =>
  ({
    body: { round: 'round/1', zone: `zone/${id}`, coverage: { value: 0.1 }, ...over },
  }) as unknown as Thing<'finding'>;
const record = (...findings: Thing<'finding'>[]) => ({ findings }) as unknown as SculptureRecord;

describe('zones asked again', () => {
  const many = Array.from({ length: 24 }, (_, i) => zone(String(i)));

  it('are three, in walking order, and the same after a restart and on another tablet', () => {
    const drawn = drawAgain('round/1', many);
    expect(drawn).toHaveLength(3);
    expect(drawn).toEqual(many.map((z) => z.thing).filter((z) => drawn.includes(z)));
    expect(drawAgain('round/1', many)).toEqual(drawn);
  });

  it('fall on every zone about equally over many rounds, so that nobody can get ready for them', () => {
    const times = new Map<string, number>();
    for (let round = 0; round < 4000; round += 1) {
      for (const name of drawAgain(`round/${round}`, many)) times.set(name, (times.get(name) ?? 0) + 1);
    }
    // 500 expected each, sd about 21: five of them to either side.
    for (const z of many) expect(Math.abs((times.get(z.thing) ?? 0) - 500)).toBeLessThan(105);
  });

  it('never send anybody up a ladder again, but may use the lift one stands on', () => {
    const zones = [zone('g'), zone('ladder', 'ladder'), zone('lift', 'lift')];
    const all = record(finding('g'), finding('ladder'), finding('lift'));
    const able = (last: string) => canBeAskedAgain(all, 'round/1', zones, `zone/${last}`).map((z) => z.thing);
    expect(able('ladder')).toEqual(['zone/g']);
    expect(able('lift')).toEqual(['zone/g', 'zone/lift']);
  });

  it('are only those judged in this round: not carried, not gone, not of another round', () => {
    const zones = ['a', 'b', 'c', 'd'].map((id) => zone(id));
    const all = record(
      finding('a'),
      finding('b', { carriedFrom: 'round/0' }),
      finding('c', { cleared: true }),
      finding('d', { round: 'round/0' }),
    );
    expect(canBeAskedAgain(all, 'round/1', zones, undefined).map((z) => z.thing)).toEqual(['zone/a']);
  });
});
