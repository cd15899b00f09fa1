import { readFileSync } from 'node:fs';
import Ajv2020 from 'ajv/dist/2020';
import { expect, test } from 'vitest';
import { surveySchema, writeSurvey } from '../../../src/engine/exchange';
import { seededSurvey } from '../../files/seededSurvey';
import { smallSurvey } from '../../files/smallSurvey';

// The checks of ajv are its own; formats are said to it, not judged by it.
const ajv = new Ajv2020({ strict: false, allErrors: true, validateFormats: false });
const valid = ajv.compile(surveySchema());
const parsed = (survey: { collection: string; entries: Parameters<typeof writeSurvey>[1] }) =>
  JSON.parse(new TextDecoder().decode(writeSurvey(survey.collection, survey.entries)));
const seededOne = seededSurvey({ works: 3, zonesEach: 5, rounds: 3, photos: 6, seed: 4 });

test('the schema in public/ is the one these schemas make: run npm run schema after a change', () => {
  expect(JSON.parse(readFileSync('public/survey.schema.json', 'utf8'))).toEqual(surveySchema());
});

test.each([
  ['a small survey', smallSurvey()],
  ['a seeded survey', seededOne],
])('%s is what an independent validator takes for one', (_, survey) => {
  expect(valid(parsed(survey)), JSON.stringify(valid.errors?.slice(0, 3))).toBe(true);
});

type Spoil = (survey: {
  entries: { kind: string; body: Record<string, never>; [key: string]: unknown }[];
  [key: string]: unknown;
}) => void;
const bodyOf =
  (kind: string, change: (body: Record<string, unknown>) => void): Spoil =>
  (survey) => {
    const entry = survey.entries.find((e) => e.kind === kind);
    if (!entry) throw new Error(`no ${kind}`);
    change(entry.body);
  };
const spoiled: readonly (readonly [string, Spoil])[] = [
  ['a coverage of 120 %', bodyOf('finding', (b) => Object.assign(b.coverage as object, { value: 1.2 }))],
  ['a severity nobody has', bodyOf('finding', (b) => Object.assign(b, { severity: 'terrible' }))],
  [
    'a zone of no area',
    bodyOf('zone', (b) => Object.assign((b.versions as { area: object }[])[0]?.area ?? {}, { m2: 0 })),
  ],
  ['a round of no type', bodyOf('round', (b) => Reflect.deleteProperty(b, 'type'))],
  ['an entry without an id', (s) => Reflect.deleteProperty(s.entries[0] as object, 'id')],
  ['another format', (s) => Object.assign(s, { format: 'something else' })],
  ['a later major version', (s) => Object.assign(s, { version: '2.0' })],
];

test.each(spoiled)('%s is refused', (_, spoil) => {
  const survey = parsed(seededOne);
  spoil(survey);
  expect(valid(survey)).toBe(false);
});

test('a kind of a later version is taken as it came', () => {
  const survey = parsed(seededOne);
  survey.entries.push({ ...survey.entries[0], kind: 'dream', thing: 'dream/1', body: { of: 'bronze' } });
  expect(valid(survey), JSON.stringify(valid.errors?.slice(0, 3))).toBe(true);
});
