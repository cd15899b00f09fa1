import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { writeSurvey } from '../../src/engine/exchange';
import { seededSurvey } from '../files/seededSurvey';
import { smallSurvey } from '../files/smallSurvey';
import { askPython } from './python';

// Python's own json and zlib, and jsonschema (Debian python3-jsonschema), know nothing of how this app writes.
const schema = 'public/survey.schema.json';
const validate = `
import json, sys
from jsonschema import Draft202012Validator
schema = json.load(open(sys.argv[1])); Draft202012Validator.check_schema(schema)
survey = json.load(open(sys.argv[2]))
exec(sys.argv[3])
faults = list(Draft202012Validator(schema).iter_errors(survey))
print(len(faults), *['/'.join(map(str, f.path)) + ': ' + f.message[:200] for f in faults[:3]])
`;
const checkSum = `
import sys, zlib, json
text = open(sys.argv[1], 'rb').read()
head, rest = text.split(b',', 1)
print(json.loads(head + b'}')['check'] == f'crc32:{zlib.crc32(rest):08x}')
`;
const writeAgain = `
import sys, json
text = open(sys.argv[1], encoding='utf-8').read()
print(json.dumps(json.loads(text), sort_keys=True, separators=(',', ':'), ensure_ascii=False) == text)
`;

const surveys = {
  'a small survey': smallSurvey(),
  'a collection of 6 works over 4 rounds': seededSurvey({
    works: 6,
    zonesEach: 8,
    rounds: 4,
    photos: 12,
    seed: 20261125,
  }),
};
const names = Object.keys(surveys);
let folder: string;
const fileOf = (name: string) => join(folder, `${names.indexOf(name)}.survey.json`);

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'patina-round-outside-'));
  for (const [name, { collection, entries }] of Object.entries(surveys)) {
    writeFileSync(fileOf(name), writeSurvey(collection, entries));
  }
});

afterAll(() => rmSync(folder, { recursive: true }));

test.each(names)('%s, as written, is what the published JSON Schema says it is', (name) => {
  expect(askPython(validate, schema, fileOf(name), '')).toBe('0');
});

test.each([
  ['an entry without the thing it speaks of', "del survey['entries'][0]['thing']"],
  ['entries that are no list', "survey['entries'] = {}"],
  ['a file of another format', "survey['format'] = 'something else'"],
])('the published JSON Schema refuses %s', (_, spoil) => {
  expect(askPython(validate, schema, fileOf(names[0]!), spoil)).not.toMatch(/^0/);
});

test.each(names)('the check sum of %s is the CRC-32 another program finds', (name) => {
  expect(askPython(checkSum, fileOf(name))).toBe('True');
});

test.each(names)('%s is written as another writer of sorted JSON writes it, byte for byte', (name) => {
  expect(askPython(writeAgain, fileOf(name))).toBe('True');
});
