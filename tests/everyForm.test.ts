import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const screens = join(import.meta.dirname, '../src/screens');
const files = readdirSync(screens, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.tsx') && !name.startsWith('parts/'))
  .map((name) => ({ name, text: readFileSync(join(screens, name), 'utf8') }));

/** What a person types or chooses with, as the shared parts offer it. */
const entries = ['Field', 'MoneyField', 'PeopleEntry', 'SignedEntry', 'HoursEntry', 'textarea'];

const shows = (text: string, component: string) => new RegExp(`<${component}\\b`).test(text);
const exported = (text: string) => [...text.matchAll(/^export function ([A-Z]\w*)/gm)].map(([, name]) => name ?? '');

/** The files in which something is typed, also by way of parts of forms that hold nothing themselves. */
const typedInto = (): readonly (typeof files)[number][] => {
  const parts = new Set(entries);
  for (let known = 0; known !== parts.size; ) {
    known = parts.size;
    for (const { text } of files)
      if (!/\buseState\b/.test(text) && [...parts].some((part) => shows(text, part)))
        for (const name of exported(text)) parts.add(name);
  }
  return files.filter(({ text }) => [...parts].some((part) => shows(text, part)));
};

/** Forms that do not hold what is typed, and why. */
const notHeld: Readonly<Record<string, string>> = {
  'bring/BringScreen.tsx':
    'lists and photos begin with a file, which a browser gives only once; the report is held by its own form',
  'care-day/CareDayScreen.tsx': 'the air of the day is kept touch by touch, see useAir',
  'carry/Leaving.tsx': 'the survey as text, to be copied',
  'due/CalendarSheet.tsx': 'the text is given out, nothing is typed',
  'hot-work/HeatTalk.tsx': 'a sum, nothing of it is kept',
  'in-step/Access.tsx': 'a password is not laid down anywhere',
  'money/RateFromInterest.tsx': 'a sum; its result goes into a field that is held',
  'papers/PaperScreen.tsx': 'the author of the print at hand; own words are held by their own fields',
  'round/StartRound.tsx': 'what the surface and the day are like is asked anew each time',
  'sculptures/Works.tsx': 'a search',
};

/** Of the moment: what was tried, what is open, what went wrong. */
const ofTheMoment = new Set(
  'tried fault faults missing wrong open refused adding erasing splitting asked editing problem under'.split(' '),
);

const statesIn = (text: string) =>
  [...text.matchAll(/const \[(\w+), (set\w+)\] = useState/g)]
    .map(([, value = '', set = '']) => ({ value, set }))
    .filter(({ value }) => !ofTheMoment.has(value));

test('every form in which something is typed holds it until it is kept, or says here why not', () => {
  const forms = typedInto().filter(({ text }) => statesIn(text).length > 0);
  expect(forms.length).toBeGreaterThan(60);
  const without = forms.filter(({ text }) => !/\buseTyped\(/.test(text)).map(({ name }) => name);
  expect(without.sort()).toEqual(Object.keys(notHeld).sort());
});

test('no field of a form that holds what is typed is left out', () => {
  const left = typedInto().flatMap(({ name, text }) => {
    if (!text.includes('useTyped(')) return [];
    const held = [...text.matchAll(/useTyped\([\s\S]*?\n? *\}?\);/g)].map(([call]) => call).join(' ');
    return statesIn(text).flatMap(({ value, set }) =>
      new RegExp(`\\[${value}, (${set}|\\()`).test(held) ? [] : [`${name}: ${value}`],
    );
  });
  expect(left).toEqual([]);
});

test('what a form holds is said at its head, and forgotten once it is kept', () => {
  const silent = files.filter(({ text }) => {
    const called = [...text.matchAll(/const (\w+) = useTyped\(/g)].map(([, name]) => name ?? '');
    return called.some(
      (name) =>
        !(text.includes(`{${name}.line}`) || text.includes(`typed={${name}}`)) ||
        !(text.includes(`useDeed(${name})`) || text.includes(`${name}.kept`) || text.includes(`typed={${name}}`)),
    );
  });
  expect(silent.map(({ name }) => name)).toEqual([]);
});
