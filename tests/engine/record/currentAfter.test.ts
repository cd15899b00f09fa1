import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Current, currentAfter, currentOf, type Entry } from '../../../src/engine/record';
import { entry, round, uuid, zoneA } from '../../files/entries';

const step = fc.record({
  gone: fc.boolean(),
  restores: fc.boolean(),
  replaces: fc.constantFrom('head', 'nothing', 'first'),
});

test('where it answers, it says what the whole history says', () => {
  let answered = 0;
  fc.assert(
    fc.property(fc.array(step, { minLength: 1, maxLength: 6 }), (steps) => {
      const history: Entry[] = [];
      let before: Current | undefined;
      steps.forEach(({ gone, restores, replaces }, i) => {
        const head = replaces === 'head' ? before?.heads[0] : replaces === 'first' ? history[0]?.id : undefined;
        const made = entry(200 + i, {
          thing: zoneA,
          kind: 'zone',
          replaces: head ? [head] : [],
          ...(gone ? { gone: true as const } : {}),
          ...(restores && history[0] ? { restores: history[0].id } : {}),
          body: { round, step: i },
        });
        history.push(made);
        const whole = currentOf(history);
        const told = currentAfter(before, made);
        if (told) {
          answered += 1;
          expect(told).toEqual(whole);
        }
        before = whole;
      });
    }),
    { numRuns: 400, seed: 20261125 },
  );
  expect(answered).toBeGreaterThan(200);
});

test('it does not answer for a second version beside the first', () => {
  const one = entry(1, { thing: zoneA, kind: 'zone', replaces: [], body: {} });
  const two = entry(2, { thing: zoneA, kind: 'zone', replaces: [uuid(99)], body: {} });
  expect(currentAfter(currentOf([one]), two)).toBeUndefined();
});
