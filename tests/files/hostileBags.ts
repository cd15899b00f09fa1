import { deflateRawSync } from 'node:zlib';
import type { BagReason } from '../../src/engine/bag';
import { asZipped, bagged, type Contents, hashOf, payloadOf, picture } from './bags';
import { smallSurvey } from './smallSurvey';
import { utf8, type Zipped, type ZipSays, zipOf } from './zipped';

/** A bag nobody should have to fear, and what has to be said of it. */
export interface HostileBag {
  readonly name: string;
  readonly code: BagReason;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

const { collection, entries } = smallSurvey();
const payload = payloadOf(collection, entries.slice(0, 2), [picture(1)]);
const photo = `data/photos/${hashOf(picture(1))}.jpg`;
const hashes = (paths: readonly string[]) => paths.map((path) => `${hashOf(payload.get(path) ?? utf8(''))}  ${path}\n`);
const manifest = hashes([...payload.keys()]).join('');

const zipped = (name: string, code: BagReason, files: readonly Zipped[], says: ZipSays = {}): HostileBag => ({
  name,
  code,
  bytes: zipOf(files, says),
});
const bag = (name: string, code: BagReason, contents: Contents): HostileBag => zipped(name, code, asZipped(contents));
const texts = (name: string, code: BagReason, over: Record<string, string | undefined>): HostileBag =>
  bag(name, code, bagged(payload, { 'tagmanifest-sha256.txt': undefined, ...over }));
const sound = (): Contents => bagged(payload);

/** The cases of the conformance suite of BagIt by their names there, and what they lead to. */
const packages: readonly HostileBag[] = [
  bag('corrupt data file', 'bag: file altered', new Map([...sound(), [photo, picture(2)]])),
  bag(
    'corrupt tag file',
    'bag: file altered',
    new Map([...sound(), ['bag-info.txt', utf8('Bagging-Date: 2026-01-01\n')]]),
  ),
  bag(
    'extra file in the payload',
    'bag: file not listed',
    new Map([...bagged(payload, { 'bag-info.txt': undefined }), ['data/more.txt', utf8('x')]]),
  ),
  bag('missing declaration', 'bag: no declaration', new Map([...sound()].filter(([path]) => path !== 'bagit.txt'))),
  texts('byte-order mark in the declaration', 'bag: text', {
    'bagit.txt': '\ufeffBagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n',
  }),
  texts('bad whitespace in the declaration', 'bag: declaration', {
    'bagit.txt': 'BagIt-Version : 1.0\nTag-File-Character-Encoding: UTF-8\n',
  }),
  texts('another encoding', 'bag: declaration', {
    'bagit.txt': 'BagIt-Version: 1.0\nTag-File-Character-Encoding: ISO-8859-1\n',
  }),
  texts('wrong version', 'bag: version', { 'bagit.txt': 'BagIt-Version: 2.0\nTag-File-Character-Encoding: UTF-8\n' }),
  bag('not all manifests list all files', 'bag: other manifest', new Map([...sound(), ['manifest-md5.txt', utf8('')]])),
  texts('a file not listed', 'bag: file not listed', {
    'bag-info.txt': undefined,
    'manifest-sha256.txt': hashes([...payload.keys()].slice(1)).join(''),
  }),
  texts('the same file listed twice with one hash', 'bag: listed twice', {
    'manifest-sha256.txt': manifest + hashes([photo]).join(''),
  }),
  texts('the same file listed twice with two hashes', 'bag: listed twice', {
    'manifest-sha256.txt': `${manifest}${'0'.repeat(64)}  ${photo}\n`,
  }),
  texts('a file listed and not there', 'bag: file missing', {
    'bag-info.txt': undefined,
    'manifest-sha256.txt': `${manifest}${'0'.repeat(64)}  data/photos/${'0'.repeat(64)}.jpg\n`,
  }),
  texts('no manifest', 'bag: no manifest', { 'manifest-sha256.txt': undefined }),
  texts('a manifest of short sums', 'bag: manifest line', { 'manifest-sha256.txt': `${'0'.repeat(32)}  ${photo}\n` }),
  texts('a count of bytes that is another', 'bag: count differs', { 'bag-info.txt': 'Payload-Oxum: 12.3\n' }),
  texts('a line of bag-info.txt that says nothing', 'bag: info line', { 'bag-info.txt': 'nothing\n' }),
  bag(
    'a tag file listed and not there',
    'bag: file missing',
    new Map([...sound()].filter(([path]) => path !== 'bag-info.txt')),
  ),
  bag(
    'files to be fetched',
    'bag: fetch',
    new Map([...sound(), ['fetch.txt', utf8('https://x.invalid/a 1 data/a.json\n')]]),
  ),
  bag('no survey', 'bag: no survey', bagged(new Map([[photo, picture(1)]]))),
  bag('a photo under the name of another', 'bag: photo name', bagged(new Map([...payload, [photo, picture(2)]]))),
  bag('a zip that is no bag', 'bag: not a bag', new Map([['holiday.jpg', picture(1)]])),
  { name: 'an empty zip', code: 'bag: not a bag', bytes: zipOf([]) },
];

const paths: readonly string[] = [
  ...[
    '../up.json',
    'data/../../up.json',
    'data/./a.json',
    '/data/a.json',
    '/etc/passwd',
    '~/a.json',
    'data/~root.json',
  ],
  ...[
    'C:/a.json',
    'C:\\a.json',
    '\\\\server\\share\\a.json',
    'data\\a.json',
    'data//a.json',
    'data/a.json.',
    'data/a.json ',
  ],
  ...['data/CON', 'data/con.json', 'data/aux/a.json', 'data/LPT1.txt', 'data/nul.html', 'data/.hidden.json', 'data/a'],
  ...[
    'data/a\u0000.json',
    'data/\u202egnp.json',
    'data/a.zip',
    'data/a.svg',
    'data/a.exe',
    'data/a.json/b',
    'data/ä.json',
  ],
  ...[
    'data/photos/A B.jpg',
    'data/Photos/a.jpg',
    'other/a.json',
    'a.json',
    'data/a:b.json',
    'data/a\n.json',
    'data/%2e%2e/a.json',
  ],
  ...[
    '..',
    '.',
    'data/',
    `data/${'a'.repeat(300)}.json`,
    'manifest.txt',
    'bagit.txt/x.json',
    'data/__proto__',
    'constructor',
  ],
].filter((path) => !path.endsWith('/'));

const names: readonly HostileBag[] = [
  ...paths.map((path) =>
    zipped(`the name ${JSON.stringify(path)}`, 'bag: name', [
      ...asZipped(sound(), 'bag/'),
      { name: `bag/${path}`, bytes: utf8('x') },
    ]),
  ),
  ...paths.map((path) =>
    zipped(`the name ${JSON.stringify(path)} beside the bag`, 'bag: name', [
      ...asZipped(sound(), 'bag/'),
      { name: path, bytes: utf8('x') },
    ]),
  ),
  ...['../', '/', 'a/b/c/', '~x/', 'C:/', 'x./', '\u202e/'].map((base) =>
    zipped(`the folder ${JSON.stringify(base)} around it`, 'bag: name', asZipped(sound(), base)),
  ),
  zipped('a name twice', 'bag: name twice', [...asZipped(sound()), { name: 'data/survey.json', bytes: utf8('{}') }]),
  zipped('a name twice, in capitals', 'bag: name twice', [
    ...asZipped(sound()),
    { name: 'data/SURVEY.json', bytes: utf8('{}') },
  ]),
  zipped('a name twice, with its accent written apart', 'bag: name twice', [
    ...asZipped(sound(), 'bag/'),
    { name: 'bag/data/\u00e9.json', bytes: utf8('{}') },
    { name: 'bag/data/e\u0301.json', bytes: utf8('{}') },
  ]),
  ...['data/../../x', '/etc/passwd', '~/x', 'C:\\x', '\\\\s\\x', 'data/a\\b', 'etc/x'].map((path) =>
    texts(`${path} on the list`, 'bag: path', { 'manifest-sha256.txt': `${manifest}${'0'.repeat(64)}  ${path}\n` }),
  ),
];

/** Without its count of bytes, so that what is untrue of one file is met. */
const uncounted = bagged(payload, { 'bag-info.txt': undefined });
const survey = (over: Partial<Zipped>): readonly Zipped[] =>
  asZipped(uncounted, 'bag/').map((file) => (file.name.endsWith('survey.json') ? { ...file, ...over } : file));
const [first] = asZipped(sound(), 'bag/');
const many = Array.from({ length: 20_001 }, (_, n): Zipped => ({ name: `data/${n}.json`, bytes: utf8('') }));
const whole = zipOf(asZipped(sound(), 'bag/'));

const zips: readonly HostileBag[] = [
  zipped('a password', 'bag: encrypted', survey({ flags: 0x801 })),
  zipped('strong encryption', 'bag: encrypted', survey({ flags: 0x841 })),
  zipped('a directory that is hidden', 'bag: encrypted', survey({ flags: 0x2800 })),
  zipped('a packing nobody knows', 'bag: packed otherwise', survey({ method: 12 })),
  zipped('a size that is too small', 'bag: not unpacked', survey({ deflated: true, saysBytes: 10, headerBytes: 10 })),
  zipped(
    'a size that is too large',
    'bag: not unpacked',
    survey({ deflated: true, saysBytes: 9000, headerBytes: 9000 }),
  ),
  zipped('bytes that do not inflate', 'bag: not unpacked', survey({ method: 8, bytes: utf8('not deflated at all') })),
  zipped('a size the header denies', 'bag: zip untrue', survey({ headerBytes: 1 })),
  zipped('a name the header denies', 'bag: zip untrue', survey({ headerName: 'bag/data/Survey.json' })),
  zipped('a check sum the header denies', 'bag: zip untrue', survey({ saysCrc: 1 })),
  zipped('a stored file larger than its bytes', 'bag: zip untrue', survey({ saysBytes: 9_000 })),
  zipped('two files that share bytes', 'bag: zip untrue', survey({ saysAt: 0 })),
  zipped('one header for two files', 'bag: zip untrue', [
    ...asZipped(sound(), 'bag/'),
    { name: 'bag/data/more.txt', headerName: first?.name ?? '', bytes: utf8(''), saysAt: 0 },
  ]),
  zipped('a file that begins beyond the end', 'bag: zip untrue', survey({ saysAt: 4_000_000_000 })),
  zipped('a link to another file', 'bag: zip untrue', survey({ attributes: 0o120777 << 16 })),
  zipped('something before the first file', 'bag: zip untrue', survey({}), { before: utf8('#!/bin/sh\n') }),
  zipped('more files than it has', 'bag: zip untrue', survey({}), { files: 40 }),
  zipped('fewer files than it has', 'bag: zip untrue', survey({}), { files: 1 }),
  zipped('a part of several', 'bag: zip in parts', survey({}), { disk: 3 }),
  zipped('20,001 files', 'bag: too many files', many, { large: true }),
  zipped(
    'nulls that swell a thousandfold',
    'bag: swells',
    survey({ deflated: true, bytes: new Uint8Array(3_000_000) }),
  ),
  zipped('a file of 200 MB', 'bag: file too large', survey({ deflated: true, saysBytes: 200_000_000 })),
  zipped(
    'petabytes in all',
    'bag: too large',
    Array.from(
      { length: 300 },
      (_, n): Zipped => ({
        name: `data/${n}.json`,
        bytes: utf8('x'),
        method: 8,
        saysBytes: 149_000_000,
        saysPacked: 149_000_000,
      }),
    ),
  ),
  zipped('a file that swells and says it does not', 'bag: not unpacked', [
    ...asZipped(uncounted, 'bag/').filter(({ name }) => !name.endsWith('survey.json')),
    {
      name: 'bag/data/survey.json',
      method: 8,
      bytes: new Uint8Array(deflateRawSync(new Uint8Array(30_000_000))),
      saysBytes: 50_000,
      headerBytes: 50_000,
    },
  ]),
  zipped('something hung on to it', 'bag: cut off', survey({}), { after: utf8('more') }),
  { name: 'cut in the middle', code: 'bag: cut off', bytes: whole.slice(0, whole.length >> 1) },
  { name: 'its last byte cut', code: 'bag: cut off', bytes: whole.slice(0, -1) },
];

export const hostileBags: readonly HostileBag[] = [...packages, ...names, ...zips];
