import { expect, test } from 'vitest';
import { routes } from '../../src/screens/shell/routes';
import { gardenFile, screensOfGarden, screensOfPad, workToWalk } from './screensOfGarden';

/** A path as the router reads it: `:name` is a piece, `:name?` a piece that may be missing. */
const patternOf = (path: string): RegExp =>
  new RegExp(`^${path.replace(/\/:\w+\?/g, '(?:/([^/]+))?').replace(/:\w+/g, '([^/]+)')}/?$`);

const garden = gardenFile();
const shown = [...screensOfGarden(garden.entries), ...screensOfPad('round', workToWalk(garden.entries).zones)];
const places = shown.map(({ hash }) => hash.replace(/^#/, '').split('?')[0]!);

test('no screen of the app is left out where every screen is looked at: each route has a place in the list', () => {
  const firstFor = (place: string) => routes.find(({ path }) => patternOf(path).test(place))?.path;
  const met = new Set(places.map(firstFor));
  expect(routes.map(({ path }) => path).filter((path) => !met.has(path))).toEqual([]);
});

test('every address in that list leads to a screen, but for the one that is to lead nowhere', () => {
  const nowhere = shown.filter((_, i) => !routes.some(({ path }) => patternOf(path).test(places[i]!)));
  expect(nowhere.map(({ name }) => name)).toEqual(['no such screen']);
});

test('what is for the ladder is measured as such', () => {
  const wrong = shown.filter(({ field }, i) => {
    const route = routes.find(({ path }) => patternOf(path).test(places[i]!));
    return route && (route.field ?? false) !== (field ?? false);
  });
  expect(wrong.map(({ name }) => name)).toEqual([]);
});
