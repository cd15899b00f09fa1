import type { ProblemCode } from '../../src/engine/exchange';
import { writeSurvey } from '../../src/engine/exchange';
import type { Entry } from '../../src/engine/record';
import { bodies, entry, first, round, sculpture, uuid, zoneA, zoneB } from './entries';
import { erasure } from './erasures';
import { smallSurvey } from './smallSurvey';

/** A file nobody should have to fear, and what has to be said of it. */
export interface Hostile {
  readonly name: string;
  readonly code: ProblemCode;
  readonly bytes: Uint8Array;
  /** Path the problem has to name. */
  readonly where?: string;
}

const { collection, entries } = smallSurvey();
const encode = (text: string) => new TextEncoder().encode(text);
const good = new TextDecoder().decode(writeSurvey(collection, entries));
/** The good file without its check sum, so that other faults are reached. */
const unchecked = good.replace(/"check":"[^"]*",/, '');
const whole = JSON.parse(unchecked) as Record<string, unknown>;

const text = (name: string, code: ProblemCode, content: string, where?: string): Hostile => ({
  name,
  code,
  bytes: encode(content),
  ...(where === undefined ? {} : { where }),
});

const top = (name: string, code: ProblemCode, over: Record<string, unknown>) =>
  text(name, code, JSON.stringify({ ...whole, ...over }));

/** A file of a few entries, the last at fault. */
const holding = (name: string, code: ProblemCode, field: string, ...faulty: unknown[]): Hostile => {
  const sound = [
    first(1, sculpture, 'sculpture', bodies.sculpture),
    first(2, zoneA, 'zone', bodies.zone()),
    first(4, round, 'round', bodies.round()),
  ];
  const all = [...sound, ...faulty];
  return text(name, code, JSON.stringify({ ...whole, entries: all }), `entries[${all.length - 1}]${field}`);
};

const visitName = `visit/${round.slice(6)}/${zoneA.slice(5)}`;
const findingName = (zone: string) => `finding/${round.slice(6)}/${zone.slice(5)}/green-spots/metal`;
const finding = (body: unknown, over: Partial<Entry> = {}) =>
  entry(30, { thing: findingName(zoneA), body: { ...bodies.finding(), ...(body as object) }, ...over });
const covered = (coverage: object) =>
  finding({ coverage: { value: 0.05, low: 0.04, high: 0.075, method: 'ladder', ...coverage } });
const raw = (name: string, code: ProblemCode, found: string, put: string, where?: string) =>
  text(name, code, unchecked.replace(found, put), where);

const asText: readonly Hostile[] = [
  text('nothing at all', 'empty file', ''),
  text('only spaces', 'empty file', ' \n\t '),
  text('a file cut in the middle', 'file cut off', good.slice(0, good.length >> 1)),
  text('a letter', 'not JSON', 'Dear colleague, please find attached'),
  text('a web page', 'not JSON', '<!doctype html><title>Sign in</title>'),
  text('NaN', 'not JSON', unchecked.replace('"order":1', '"order":NaN')),
  text('an unquoted word', 'not JSON', unchecked.replace('"order":1', '"order":many')),
  text('something after the end', 'not JSON', `${unchecked}}`),
  text('another format', 'not a survey', '{"type":"FeatureCollection","features":[]}'),
  text('a list', 'not a survey', '[1,2,3]'),
  text('null', 'not a survey', 'null'),
  text('100,000 brackets', 'nested too deep', '['.repeat(100_000)),
  text('100,000 objects', 'nested too deep', '{"a":'.repeat(100_000)),
  { name: 'a zip file', code: 'a zip file', bytes: Uint8Array.of(0x50, 0x4b, 3, 4, 20, 0, 0, 0) },
  {
    name: 'Latin-1',
    code: 'not UTF-8',
    bytes: Uint8Array.from(good, (c) => (c.charCodeAt(0) > 255 ? 63 : c.charCodeAt(0))),
  },
  {
    name: 'UTF-16',
    code: 'not UTF-8',
    bytes: Uint8Array.from([0xff, 0xfe, ...[...good.slice(0, 40)].flatMap((c) => [c.charCodeAt(0), 0])]),
  },
  {
    name: 'half a character in UTF-8',
    code: 'not UTF-8',
    bytes: Uint8Array.from([...encode('{"a":"'), 0xed, 0xa0, 0x80, ...encode('"}')]),
  },
  raw('half a character in an escape', 'broken character', 'Base', '\\ud800', 'entries[11].body.name'),
  raw('half a character in a name', 'broken character', '"letter":"B"', '"\\udfff":"B"'),
  raw('__proto__ as a name', 'name not allowed', '"letter":"B"', '"__proto__":{"mine":true}', 'entries[11].body'),
  raw('__proto__ written with escapes', 'name not allowed', '"letter":"B"', '"\\u005f_proto__":{"mine":true}'),
  raw('constructor as a name', 'name not allowed', '"letter":"B"', '"constructor":{"prototype":{"mine":1}}'),
  raw('prototype as a name', 'name not allowed', '"letter":"B"', '"prototype":1'),
  raw('a name twice', 'same name twice', '"letter":"B"', '"letter":"B","letter":"C"', 'entries[11].body'),
  raw('a name twice, once with an escape', 'same name twice', '"letter":"B"', '"letter":"B","l\\u0065tter":"C"'),
  raw('1e999', 'number too large', '"bytes":2400000', '"bytes":1e999', 'entries[22].body.bytes'),
  raw('2^53 + 1', 'number not exact', '"bytes":2400000', '"bytes":9007199254740993'),
  raw('a text of 100,001 characters', 'text too long', '"Base"', `"${'a'.repeat(100_001)}"`),
  text('a changed letter', 'check does not match', good.replace('Shoulder', 'Shouldor')),
  text('an entry cut out', 'check does not match', good.replace(/\{"at":[^{]*\{"role":"Steward"\}[^}]*\},/, '')),
];

const asWhole: readonly Hostile[] = [
  top('a newer major', 'newer format', { version: '2.0' }),
  top('an older major', 'newer format', { version: '0.9' }),
  top('no version', 'version not readable', { version: undefined }),
  top('a version that is none', 'version not readable', { version: '1.x' }),
  top('a number for a version', 'version not readable', { version: 1 }),
  top('no collection', 'value missing', { collection: undefined }),
  top('no entries', 'value missing', { entries: undefined }),
  top('a sculpture for a collection', 'name does not fit', { collection: sculpture }),
  top('entries that are no list', 'wrong sort of value', { entries: { 0: 'a' } }),
  top('more entries than can be', 'too many entries', { entries: Array.from({ length: 1_000_001 }, () => 0) }),
];

const inAnEntry: readonly Hostile[] = [
  holding('null for an entry', 'wrong sort of value', '', null),
  holding('an entry without an id', 'value missing', '.id', { ...finding({}), id: undefined }),
  holding('an id that is none', 'not an id', '.id', { ...finding({}), id: '../../etc/passwd' }),
  holding('a time that is none', 'not a date', '.at', finding({}, { at: 'yesterday' })),
  holding('a body that is a text', 'wrong sort of value', '.body', { ...finding({}), body: 'x' }),
  holding('a counter below nothing', 'number out of range', '.n', finding({}, { n: -1 })),
  holding('coverage below nothing', 'number out of range', '.body.coverage.low', covered({ low: -0.01 })),
  holding('more than 100 %', 'number out of range', '.body.coverage.high', covered({ high: 1.4 })),
  holding('percent where shares belong', 'number out of range', '.body.coverage.value', covered({ value: 40 })),
  holding('ends in the wrong order', 'range ends out of order', '.body.coverage', covered({ low: 0.9 })),
  holding('null for a number', 'wrong sort of value', '.body.coverage.value', covered({ value: null })),
  holding('a severity nobody knows', 'word not known', '.body.severity', finding({ severity: 'toString' })),
  holding('no severity', 'value missing', '.body.severity', finding({ severity: undefined })),
  holding(
    'a round in 9999',
    'not a date',
    '.body.date',
    entry(31, { thing: `round/${uuid(31)}`, body: bodies.round({ date: '9999-12-31' }) }),
  ),
  holding(
    'a round in the year 0',
    'not a date',
    '.body.date',
    entry(31, { thing: `round/${uuid(31)}`, body: bodies.round({ date: '0000-01-01' }) }),
  ),
  holding(
    'the 30th of February',
    'not a date',
    '.body.date',
    entry(31, { thing: `round/${uuid(31)}`, body: bodies.round({ date: '2026-02-30' }) }),
  ),
  holding(
    'a zone of no area',
    'number out of range',
    '.body.versions[0].area.m2',
    first(
      3,
      zoneB,
      'zone',
      bodies.zone({
        versions: [
          { n: 1, since: '2020-01-01', substrate: 'bronze', area: { m2: 0, low: 0, high: 1, method: 'typed' } },
        ],
      }),
    ),
  ),
  holding(
    'a zone without a version',
    'too long or too short',
    '.body.versions',
    first(3, zoneB, 'zone', bodies.zone({ versions: [] })),
  ),
  holding(
    'a split into more than the whole',
    'shares do not add up',
    '.body.split',
    first(
      3,
      zoneB,
      'zone',
      bodies.zone({
        split: {
          on: '2026-01-01',
          into: [
            { zone: zoneA, share: 0.9 },
            { zone: zoneA, share: 0.9 },
          ],
        },
      }),
    ),
  ),
  holding(
    'a zone joined to itself',
    'refers to itself',
    '.body.joined.into',
    first(3, zoneB, 'zone', bodies.zone({ joined: { on: '2026-01-01', into: zoneB } })),
  ),
  holding(
    'a name that is not of its kind',
    'name does not fit',
    '.thing',
    entry(30, { thing: 'zoo/x', kind: 'zone', body: bodies.zone() }),
  ),
  holding(
    'an unknown kind under a known name',
    'name does not fit',
    '.thing',
    entry(30, { thing: zoneB, kind: 'zebra' }),
  ),
  holding('a kind called __proto__', 'name does not fit', '.thing', entry(30, { thing: zoneB, kind: '__proto__' })),
  holding(
    'a name with nothing behind its kind',
    'name does not fit',
    '.thing',
    first(3, 'zone/', 'zone', bodies.zone()),
  ),
  holding(
    'a finding whose name says another zone',
    'name does not fit',
    '.thing',
    entry(30, { thing: findingName(zoneB), body: bodies.finding() }),
  ),
  holding('a finding whose name says another kind', 'name does not fit', '.thing', finding({ kind: 'pits' })),
  holding(
    'a photo whose name is another hash',
    'name does not fit',
    '.thing',
    first(30, `photo/${'cd'.repeat(32)}`, 'photo', {
      sculpture,
      sha256: 'ab'.repeat(32),
      mime: 'image/jpeg',
      bytes: 1,
      role: 'other',
    }),
  ),
  holding(
    'an entry within another sculpture',
    'within another',
    '.within',
    finding({}, { within: `sculpture/${uuid(77)}` }),
  ),
  holding(
    'a visit to a round',
    'refers to another kind',
    '.body.zone',
    entry(30, {
      thing: `visit/${round.slice(6)}/${round.slice(6)}`,
      body: bodies.visit({ zone: round }),
    }),
  ),
  holding(
    'photos that are none',
    'refers to another kind',
    '.body.photos[1]',
    entry(30, {
      thing: visitName,
      body: bodies.visit({ photos: [`photo/${'ab'.repeat(32)}`, 'javascript:alert(1)'] }),
    }),
  ),
];

const amongEntries: readonly Hostile[] = [
  holding('one id with two contents', 'one id, two contents', '.id', finding({}), finding({ severity: 'severe' })),
  holding('an entry that replaces itself', 'replaces itself', '.replaces', finding({}, { replaces: [uuid(30)] })),
  holding('an entry that restores itself', 'replaces itself', '.restores', finding({}, { restores: uuid(30) })),
  holding(
    'an entry that replaces what is not there',
    'replaces what is not in the file',
    '.replaces',
    finding({}, { replaces: [uuid(99)] }),
  ),
  holding(
    'an entry that restores what is not there',
    'replaces what is not in the file',
    '.restores',
    finding({}, { restores: uuid(99) }),
  ),
  holding(
    'an entry that replaces another thing',
    'replaces across things',
    '.replaces',
    finding({}, { replaces: [uuid(2)] }),
  ),
  {
    ...holding(
      'a circle of two',
      'replaces in a circle',
      '',
      finding({}, { id: uuid(40), replaces: [uuid(41)] }),
      finding({}, { id: uuid(41), replaces: [uuid(40)] }),
    ),
    where: 'entries[3].replaces',
  },
  {
    ...holding(
      'a circle of three',
      'replaces in a circle',
      '',
      finding({}, { id: uuid(40), replaces: [uuid(42)] }),
      finding({}, { id: uuid(41), replaces: [uuid(40)] }),
      finding({}, { id: uuid(42), replaces: [uuid(41)] }),
    ),
    where: 'entries[3].replaces',
  },
];

const erased = erasure(50, { entries: [uuid(99)] });
const ofErasures: readonly Hostile[] = [
  holding('an erasure taken away', 'erasure changed', '.gone', erased, {
    ...erased,
    id: uuid(51),
    gone: true,
    replaces: [uuid(50)],
  }),
  holding('an erasure said anew', 'erasure changed', '.replaces', erased, {
    ...erased,
    id: uuid(51),
    replaces: [uuid(50)],
  }),
  holding('an erasure brought back', 'erasure changed', '.replaces', erased, {
    ...erased,
    id: uuid(51),
    restores: uuid(50),
  }),
  holding('an erasure of a whole work by its name', 'not an id', '.body.names[0]', erasure(50, { names: [sculpture] })),
  holding('an erasure of bytes that are no hash', 'not an id', '.body.hashes[0]', erasure(50, { hashes: ['../../x'] })),
];

export const hostileFiles: readonly Hostile[] = [...asText, ...asWhole, ...inAnEntry, ...amongEntries, ...ofErasures];
