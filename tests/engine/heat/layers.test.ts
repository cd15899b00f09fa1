import { expect, test } from 'vitest';
import { layersOf, nextOrder, sameAsBefore, sameIn } from '../../../src/engine/heat';
import type { BodyOf, Thing } from '../../../src/engine/record';

const [a, b, c] = ['zone/a', 'zone/b', 'zone/c'] as const;
const layer = (id: number, zone: string, order: number, more: Partial<BodyOf<'layer'>> = {}): Thing<'layer'> => {
  const body = {
    sculpture: 'sculpture/1',
    campaign: 'campaign/1',
    zone,
    order,
    date: '2023-09-12',
    solution: 'Ferric nitrate',
  };
  return { thing: `layer/${id}`, body: { ...body, ...more }, heads: [] } as unknown as Thing<'layer'>;
};

test('layers of a zone stand in the order they were laid, and the next one has the next number', () => {
  const all = [layer(3, a, 2), layer(1, a, 1), layer(2, b, 1)];
  expect(layersOf(all, a).map(({ thing }) => thing)).toEqual(['layer/1', 'layer/3']);
  expect(nextOrder(all, a)).toBe(3);
  expect(nextOrder(all, c)).toBe(1);
});

test('the same as the zone before is the layer of the same number in the zone worked on last', () => {
  const all = [
    layer(1, a, 1, { time: '09:00', solution: 'Copper nitrate' }),
    layer(2, b, 1, { time: '09:40', solution: 'Ferric nitrate' }),
    layer(3, a, 2, { time: '10:10', solution: 'Bismuth nitrate' }),
  ];
  expect(sameAsBefore(all, c)?.thing).toBe('layer/2');
  expect(sameAsBefore(all, b)?.thing).toBe('layer/3');
  expect(sameAsBefore(all, a)).toBeUndefined();
});

test('what was measured, seen or photographed in one zone is never taken over into another', () => {
  const from = layer(1, a, 2, {
    ...{ strength: '10 %', tool: 'brush', passes: 3, rinsed: true, by: 'Foundry', air: '14 °C, dry', time: '09:00' },
    ...{ surface: 182, photos: ['photo/1'], note: 'lighter at the fold' },
  });
  const body = sameIn(from, b, { date: '2023-09-13', time: '11:05' });
  expect(body).toEqual({
    ...{ sculpture: 'sculpture/1', campaign: 'campaign/1', zone: b, order: 2, date: '2023-09-13', time: '11:05' },
    ...{ solution: 'Ferric nitrate', strength: '10 %', tool: 'brush', passes: 3, rinsed: true, by: 'Foundry' },
    sameAs: 'layer/1',
  });
  expect(sameIn(from, b, { date: '2023-09-12', time: '11:05' }).air).toBe('14 °C, dry');
});
