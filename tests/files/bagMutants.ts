import { bagPaths } from '../../src/engine/bag';
import { asZipped, bagged, type Contents, hashOf, payloadOf, picture } from './bags';
import { type Seeded, seeded } from './seeded';
import { smallSurvey } from './smallSurvey';
import { joined, utf8, type Zipped, zipOf } from './zipped';

type Bytes = Uint8Array<ArrayBuffer>;

const { collection, entries } = smallSurvey();
const payload = payloadOf(collection, entries.slice(0, 2), [picture(1), picture(2)]);
const sound = bagged(payload);

/** The good bags the mutants are made from: stored, deflated, told behind, large, without a folder around. */
const ways: readonly ((contents: Contents) => Bytes)[] = [
  (contents) => zipOf(asZipped(contents, 'bag/')),
  (contents) => zipOf(asZipped(contents, 'bag/', { deflated: true })),
  (contents) => zipOf(asZipped(contents, 'a/bag/', { behind: 'signed' })),
  (contents) => zipOf(asZipped(contents, '', { behind: 'plain', deflated: true })),
  (contents) => zipOf(asZipped(contents, 'bag/', { large: true }), { large: true }),
];
const good = ways.map((way) => way(sound));

const oddPaths = [
  ...[
    '../x',
    '/x',
    '~',
    'C:\\x',
    'data/',
    'data/../x',
    'data/CON',
    'data/x\u0000.json',
    '\u202e',
    '__proto__',
    'constructor',
  ],
  ...[
    'data/survey.json',
    'data/SURVEY.JSON',
    'bagit.txt',
    'fetch.txt',
    'manifest-md5.txt',
    'manifest-sha256.txt',
    '.DS_Store',
  ],
  ...[
    'data/photos/x.jpg',
    `data/photos/${'0'.repeat(64)}.jpg`,
    'data/x.zip',
    'data/x.svg',
    `data/${'a'.repeat(400)}.txt`,
    '',
  ],
];
const oddNumbers = [0, 1, 2, 8, 21, 46, 0xff, 0x800, 0x808, 0x801, 0xffff, 0x7fffffff, 0x80000000, 0xffffffff];
const oddTexts = [
  '',
  '\n',
  '\ufeff',
  'x',
  ':',
  ' : ',
  '\u0000',
  '..',
  '%0A',
  '%2e',
  '\ud800',
  '0'.repeat(64),
  'é',
  '  *data/x.json\n',
];

const signatures = [0x04034b50, 0x02014b50, 0x06054b50, 0x06064b50, 0x07064b50, 0x08074b50];
/** Where the records of a zip begin, as far as their signatures tell. */
const recordsIn = (bytes: Bytes): number[] => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const found: number[] = [];
  for (let at = 0; at + 4 <= bytes.length; at++)
    if (bytes[at] === 0x50 && signatures.includes(view.getUint32(at, true))) found.push(at);
  return found;
};

/** Alterations of the bytes, whatever they mean. */
const ofBytes: readonly ((bytes: Bytes, draw: Seeded) => Bytes)[] = [
  (bytes, draw) => {
    const i = draw.below(bytes.length);
    bytes[i] = (bytes[i] ?? 0) ^ (1 << draw.below(8));
    return bytes;
  },
  (bytes, draw) => {
    for (let n = draw.below(6); n >= 0; n--) bytes[draw.below(bytes.length)] = draw.below(256);
    return bytes;
  },
  (bytes, draw) => bytes.slice(0, draw.below(bytes.length + 1)),
  (bytes, draw) => bytes.slice(draw.below(bytes.length + 1)),
  (bytes, draw) => {
    const [i, n] = [draw.below(bytes.length), draw.below(200)];
    return joined([bytes.subarray(0, i), bytes.subarray(i + n)]);
  },
  (bytes, draw) => {
    const [i, n] = [draw.below(bytes.length), draw.below(200)];
    return joined([bytes.subarray(0, i + n), bytes.subarray(i)]);
  },
  (bytes, draw) => {
    const [i, more] = [draw.below(bytes.length), Uint8Array.from({ length: draw.below(40) }, () => draw.below(256))];
    return joined([bytes.subarray(0, i), more, bytes.subarray(i)]);
  },
  (bytes, draw) => joined(draw.next() < 0.5 ? [bytes, bytes] : [bytes, utf8(draw.pick(oddTexts))]),
];

/** Alterations of one number or one whole record of the zip. */
const ofRecords: readonly ((bytes: Bytes, draw: Seeded) => Bytes)[] = [
  (bytes, draw) => {
    const at = draw.pick(recordsIn(bytes)) + 4 + draw.below(44);
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    const [wide, value] = [draw.next() < 0.5, draw.next() < 0.8 ? draw.pick(oddNumbers) : draw.below(bytes.length)];
    if (wide && at + 4 <= bytes.length) view.setUint32(at, value, true);
    else if (at + 2 <= bytes.length) view.setUint16(at, value & 0xffff, true);
    return bytes;
  },
  (bytes, draw) => {
    const records = recordsIn(bytes);
    const i = draw.below(records.length);
    const [from, to] = [records[i] ?? 0, records[i + 1] ?? bytes.length];
    const record = bytes.slice(from, to);
    if (draw.next() < 0.5) return joined([bytes.subarray(0, from), bytes.subarray(to)]);
    return joined([bytes.subarray(0, to), record, bytes.subarray(to)]);
  },
  (bytes, draw) => {
    const records = recordsIn(bytes);
    const [i, j] = [draw.pick(records), draw.pick(records)];
    bytes.copyWithin(i, j, j + 30 + draw.below(30));
    return bytes;
  },
];

const textAltered = (bytes: Uint8Array, draw: Seeded): Uint8Array => {
  const text = new TextDecoder().decode(bytes);
  const i = draw.below(text.length + 1);
  const lines = text.split('\n');
  return utf8(
    draw.pick([
      () => text.slice(0, i) + draw.pick(oddTexts) + text.slice(i + draw.below(3)),
      () => text.slice(0, i),
      () => [...lines, draw.pick(lines)].join('\n'),
      () => lines.filter((_, n) => n !== i % lines.length).join('\n'),
      () => text.replaceAll('\n', draw.pick(['\r\n', '\r', '\n\n', ' '])),
      () => text.replace(/data\/[^\n]*/, draw.pick(oddPaths)),
    ])(),
  );
};

/** Alterations of what is in the bag, its lists made to fit or not. */
const ofContents = (draw: Seeded): Bytes => {
  const own: Contents = new Map(payload);
  const times = draw.below(2) + 1;
  for (let n = 0; n < times; n++)
    draw.pick([
      () => own.delete(draw.pick([...own.keys(), ''])),
      () => own.set(draw.pick(oddPaths), utf8(draw.pick(oddTexts))),
      () => own.set(bagPaths.survey, textAltered(payload.get(bagPaths.survey) ?? utf8(''), draw)),
      () => own.set(`${bagPaths.photos}${hashOf(picture(draw.below(4)))}.jpg`, picture(draw.below(4), draw.below(90))),
      () => undefined,
    ])();
  const whole = draw.next() < 0.5 ? bagged(own) : new Map([...bagged(payload), ...own]);
  for (let n = draw.below(3); n > 0; n--) {
    const path = draw.pick([...whole.keys()].filter((name) => !name.startsWith('data/')));
    if (draw.next() < 0.2) whole.delete(path);
    else whole.set(path, textAltered(whole.get(path) ?? utf8(''), draw));
  }
  // Most of them without the list that would say at once that a text was altered.
  if (draw.next() < 0.7) whole.delete(bagPaths.tagManifest);
  if (draw.next() < 0.3) return draw.pick(ways)(whole);
  const files = asZipped(whole, draw.pick(['', 'bag/', 'a/b/', '../', 'x\u0000/']));
  const odd = (file: Zipped): Zipped =>
    draw.pick<() => Zipped>([
      () => ({ ...file, flags: draw.pick(oddNumbers) & 0xfff7 }),
      () => ({ ...file, deflated: true, saysBytes: draw.pick(oddNumbers) }),
      () => ({ ...file, saysPacked: draw.pick(oddNumbers) }),
      () => ({ ...file, method: draw.pick([8, 9, 12, 99]) }),
      () => ({ ...file, name: draw.pick(oddPaths) }),
      () => ({ ...file, headerName: draw.pick(oddPaths) }),
      () => ({ ...file, saysAt: draw.below(5000) }),
      () => ({ ...file, extra: utf8(draw.pick(oddTexts)) }),
      () => ({ ...file, behind: 'signed', deflated: draw.next() < 0.5 }),
      () => ({ ...file, attributes: draw.pick(oddNumbers) }),
    ])();
  const chosen = draw.below(files.length * 2);
  return zipOf(files.map((file, i) => (i === chosen ? odd(file) : file)));
};

/** The n-th mutant of a seed: its bytes, its records, or what is in it altered. */
export const bagMutant = (seed: number, n: number): Bytes => {
  const draw = seeded(Math.imul(seed, 0x9e3779b1) ^ Math.imul(n + 1, 0x85ebca6b));
  const way = draw.next();
  if (way > 0.6) return ofContents(draw);
  let bytes = draw.pick(good).slice();
  for (let times = draw.below(3); times >= 0 && bytes.length > 60 && recordsIn(bytes).length > 0; times--)
    bytes = draw.pick(way < 0.25 ? ofBytes : ofRecords)(bytes, draw);
  return bytes;
};
