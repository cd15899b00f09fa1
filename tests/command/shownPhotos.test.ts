import { expect, it } from 'vitest';
import { scoredSurvey } from '../../src/command/scoredSurvey';
import { readSurvey, writeSurvey } from '../../src/engine/exchange';
import { type Entry, nameOf } from '../../src/engine/record';
import { entry, sculpture, uuid, zoneA } from '../files/entries';
import { smallSurvey } from '../files/smallSurvey';

const photo = nameOf.photo('b'.repeat(64));

const scoredWith = (more: readonly Entry[]) => {
  const { collection, entries } = smallSurvey();
  const read = readSurvey(writeSurvey(collection, [...entries, ...more]));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return JSON.parse(JSON.stringify(scoredSurvey(read, '2026-06-01').photos[0]));
};
const conditions = { illuminant: 'D65', observer: '10', geometry: 'd/8 included', aperture: 8 };

it('prints a measurement worked out again from its dots, whatever figure stands in the file', () => {
  const { measured } = scoredWith([
    entry(400, {
      thing: nameOf.measure(photo, zoneA, 'even-green-film', 'dots'),
      kind: 'measure',
      body: {
        ...{ sculpture, photo, about: zoneA, kind: 'even-green-film', date: '2026-05-02' },
        selector: {
          type: 'SvgSelector',
          value:
            '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1 1" preserveAspectRatio="none"><polygon points="0.1,0.1 0.9,0.1 0.9,0.9 0.1,0.9"/></svg>',
        },
        coverage: { value: 0.9, low: 0.8, high: 0.95, method: 'dots' },
        // Newcombe 1998, 15 of 148: 0.0624 to 0.1605; recomputed, not read in the paper.
        working: { seed: 3, dots: 148, answers: 'y'.repeat(15) + 'n'.repeat(133) },
      },
    }),
  ]);
  const row = measured.find(({ kind }: { kind: string }) => kind === 'even-green-film');
  expect(row).toMatchObject({ about: zoneA, method: 'dots', photo });
  expect(row.value).toBeCloseTo(15 / 148, 9);
  expect(row.low).toBeCloseTo(0.062386, 5);
  expect(row.high).toBeCloseTo(0.160487, 5);
  expect(row.reasons.every(({ says }: { says: string }) => says.length > 10)).toBe(true);
});

it('prints how far a reading lies from the agreed colour, and no figure where it was read in another way', () => {
  const [agreed, reading, other] = [nameOf.agreedColour(uuid(61)), nameOf.reading(uuid(62)), nameOf.reading(uuid(63))];
  const base = { sculpture, zone: zoneA, ...conditions };
  const { colours } = scoredWith([
    // Sharma, Wu and Dalal 2005, pair 1: 2.0425.
    entry(401, {
      thing: agreed,
      kind: 'agreedColour',
      body: { ...base, name: 'Panel', date: '2026-05-01', by: 'Founder', value: { L: 50, a: 0, b: -82.7485 } },
    }),
    entry(402, {
      thing: reading,
      kind: 'reading',
      body: { ...base, quantity: 'colour', date: '2026-05-03', values: [{ L: 50, a: 2.6772, b: -79.7751 }] },
    }),
    entry(403, {
      thing: other,
      kind: 'reading',
      body: { ...base, observer: '2', quantity: 'colour', date: '2026-05-04', values: [{ L: 50, a: 0, b: 0 }] },
    }),
  ]);
  const row = (thing: string) => colours.find((each: { reading: string }) => each.reading === thing);
  expect(row(reading).toAgreed).toMatchObject({ agreed });
  expect(row(reading).toAgreed.value).toBeCloseTo(2.0425, 4);
  expect(row(other).toAgreed.value).toBeNull();
  expect(row(other).toAgreed.reasons).not.toHaveLength(0);
});
