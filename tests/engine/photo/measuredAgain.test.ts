import { describe, expect, it } from 'vitest';
import {
  dotsCoverage,
  isRefused,
  type Measurement,
  maskCoverage,
  measuredAgain,
  type Outline,
  type Size,
  tracedCoverage,
  writeSelector,
} from '../../../src/engine/photo';
import { bodySchemas } from '../../../src/engine/record/schemas';

const size: Size = { width: 1200, height: 900 };
const zone: Outline = [
  [
    [0.1, 0.1],
    [0.9, 0.1],
    [0.9, 0.9],
    [0.1, 0.9],
  ],
];
const patches: Outline = [
  [
    [0.2, 0.2],
    [0.4, 0.2],
    [0.4, 0.4],
  ],
];
const selectorOf = (outline: Outline) => ({ type: 'SvgSelector' as const, value: writeSelector(outline) });
const answers = `${'y'.repeat(11)}${'n'.repeat(35)}ggg`;
const [inMask, outsideMask] = ['yyyyyyyynn', `${'n'.repeat(18)}yg`];

const measured = (told: Measurement) => {
  if (isRefused(told)) throw new Error(told.refused.map(({ code }) => code).join());
  return told;
};
const body = (told: Measurement, working: object) => ({
  sculpture: 'sculpture/1',
  photo: 'photo/1',
  about: 'zone/1',
  kind: 'green-spots',
  date: '2026-05-12',
  selector: selectorOf(zone),
  coverage: measured(told).coverage,
  working,
});

const ways: readonly (readonly [string, Measurement, object])[] = [
  ['patches', tracedCoverage(patches, zone, size), { patches: selectorOf(patches) }],
  ['no patch at all', tracedCoverage([], zone, size), { patches: selectorOf([]) }],
  ['dots', dotsCoverage(answers, zone, size), { dots: 49, seed: 3, answers }],
  [
    'mask and check dots',
    maskCoverage({ share: 0.21, leftOut: 0.15 }, inMask, outsideMask, zone, size),
    { maskShare: 0.21, leftOut: 0.15, inMask, outsideMask },
  ],
];

describe('A measurement kept in the record', () => {
  it.each(ways)('by %s fits the record, and comes out the same from what was touched', (_, told, working) => {
    const kept = bodySchemas.measure.parse(JSON.parse(JSON.stringify(body(told, working))));
    expect(measuredAgain(kept, size)).toEqual(told);
  });

  it('says so where its working is not there, or the part of the photo cannot be read', () => {
    const [, told, working] = ways[2] as (typeof ways)[number];
    const kept = bodySchemas.measure.parse(body(told, working));
    const lost = { refused: [{ code: 'coverage: working not kept', params: {} }] };
    expect(measuredAgain({ ...kept, working: {} }, size)).toEqual(lost);
    expect(measuredAgain({ ...kept, selector: { type: 'SvgSelector', value: '<svg/>' } }, size)).toEqual(lost);
    expect(measuredAgain({ ...kept, coverage: { ...kept.coverage, method: 'ladder' } }, size)).toEqual(lost);
  });
});
