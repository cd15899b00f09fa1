import { expect, it } from 'vitest';
import { kindsOfThing } from '../../../src/engine/record';
import { bodySchemas } from '../../../src/engine/record/schemas';

it('The list of known kinds is the list of kinds that have a schema', () => {
  expect([...kindsOfThing].sort()).toEqual(Object.keys(bodySchemas).sort());
});
