import { expect, test } from 'vitest';
import { photosUnlike } from '../../../src/engine/photo';

const alike = { light: 'overcast', wet: 'dry', washed: 'before wash', focal35: 35, width: 3000, height: 4000 } as const;
const codes = (...[one, other]: Parameters<typeof photosUnlike>) => photosUnlike(one, other).map(({ code }) => code);

test('two photos taken alike have nothing against them', () => {
  expect(codes(alike, { ...alike, focal35: 37 })).toEqual([]);
});

test.each([
  [{ light: 'sun' }, 'photos: light not alike'],
  [{ wet: 'wet' }, 'photos: wet not alike'],
  [{ washed: 'after wash' }, 'photos: washed not alike'],
  [{ focal35: 28 }, 'photos: lens not alike'],
  [{ width: 4000, height: 3000 }, 'photos: one upright, one lengthwise'],
] as const)('%o is said, for the difference may be that alone', (other, code) => {
  expect(codes(alike, { ...alike, ...other })).toEqual([code]);
});

test('light nobody wrote down is no likeness', () => {
  const { light: _, ...unsaid } = alike;
  expect(photosUnlike(unsaid, alike)).toEqual([{ code: 'photos: light or wet not said', params: { what: 'light' } }]);
  expect(photosUnlike({}, alike)[0]?.params.what).toBe('light, wet');
});
