import { expect, it } from 'vitest';
import { bodySchemas } from '../../src/engine/record/schemas';
import { w } from '../../src/words';

it('every kind of thing a file may still hold is named in words before the file leaves', () => {
  expect(Object.keys(bodySchemas).filter((kind) => !Object.hasOwn(w.carry.holdKinds, kind))).toEqual([]);
});
