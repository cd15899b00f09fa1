import { afterEach, expect, it } from 'vitest';
import { factsOf } from '../../../src/screens/stations/stationText';
import { speak } from '../../../src/words/tongue';

afterEach(() => speak({ language: 'en', locale: 'en-GB', units: 'metric' }));

const station = {
  sculpture: 'sculpture/x',
  letter: 'A',
  side: 'front',
  aim: 'Buckle',
  mark: 'Pin',
  distance: 9,
  height: 1.5,
};
const told = () => factsOf(station as never).map((text) => text.replace('\u00a0', ' '));

it('how far off a photo is taken is told in the unit chosen: feet are never called metres', () => {
  expect(told()).toEqual(['9 m from the work', 'lens 1.5 m up']);
  speak({ language: 'en', locale: 'en-US', units: 'us' });
  expect(told()).toEqual(['29.5 ft from the work', 'lens 4.92 ft up']);
});
