import { describe, expect, it } from 'vitest';
import {
  type BagInfo,
  declaration,
  photoAt,
  photoPath,
  readDeclaration,
  readInfo,
  readManifest,
  writeInfo,
  writeManifest,
} from '../../../src/engine/bag';

const utf8 = (text: string) => new TextEncoder().encode(text);
const a = 'a'.repeat(64);
const b = 'b'.repeat(64);
const code = (read: { readonly ok: boolean; readonly reason?: { readonly code: string } }) => read.reason?.code;

describe('bagit.txt', () => {
  it('is read as it is written, whatever way its lines end', () => {
    for (const text of [declaration, declaration.replaceAll('\n', '\r\n'), declaration.replaceAll('\n', '\r')])
      expect(readDeclaration(utf8(text))).toEqual({ ok: true, value: '1.0' });
  });

  it.each([
    ['a byte-order mark in front', `\ufeff${declaration}`, 'bag: text'],
    ['white space before the colon', declaration.replace('Version:', 'Version :'), 'bag: declaration'],
    ['white space in front', ` ${declaration}`, 'bag: declaration'],
    ['another encoding', declaration.replace('UTF-8', 'UTF-16'), 'bag: declaration'],
    ['a line more', `${declaration}More: 1\n`, 'bag: declaration'],
    ['nothing in it', '', 'bag: declaration'],
    ['a version that is none', declaration.replace('1.0', '<error>'), 'bag: declaration'],
    ['a version to come', declaration.replace('1.0', '2.0'), 'bag: version'],
  ])('refuses %s', (_, text, wrong) => {
    expect(code(readDeclaration(utf8(text)))).toBe(wrong);
  });

  it('refuses bytes that are no UTF-8', () => {
    expect(code(readDeclaration(Uint8Array.of(0xff, 0xfe, 0x42)))).toBe('bag: text');
  });
});

describe('manifests', () => {
  const files = [
    { path: 'data/b 100%.txt', sha256: b },
    { path: 'data/a\nline.txt', sha256: a },
  ];

  it('come back as they were written, paths with line ends and per cent signs too', () => {
    const text = writeManifest(files);
    expect(text.split('\n')).toHaveLength(3);
    expect(text).toBe(`${a}  data/a%0Aline.txt\n${b}  data/b 100%25.txt\n`);
    const read = readManifest('manifest-sha256.txt', utf8(text.replace('a%0Aline', 'aline')));
    expect(read.ok && [...read.value]).toEqual([
      ['data/aline.txt', a],
      ['data/b 100%.txt', b],
    ]);
  });

  it('are read with one blank or several, the star of a binary file, and capital digits', () => {
    const read = readManifest('manifest-sha256.txt', utf8(`${a.toUpperCase()} *data/x\r\n${b}\t \tdata/y\r\n`));
    expect(read.ok && [...read.value]).toEqual([
      ['data/x', a],
      ['data/y', b],
    ]);
  });

  it.each([
    ['the same file twice, with one hash', `${a}  data/x\n${a}  data/x\n`, 'bag: listed twice'],
    ['the same file twice, with two', `${a}  data/x\n${b}  data/x\n`, 'bag: listed twice'],
    ['a path that climbs', `${a}  data/../../x\n`, 'bag: path'],
    ['a path that starts at the root', `${a}  /etc/x\n`, 'bag: path'],
    ['a path at home', `${a}  ~/x\n`, 'bag: path'],
    ['a drive', `${a}  C:\\x\n`, 'bag: path'],
    ['a share', `${a}  \\\\server\\x\n`, 'bag: path'],
    ['a path outside data', `${a}  x\n`, 'bag: path'],
    ['a path turned round by a mark', `${a}  data/x\u202egpj\n`, 'bag: path'],
    ['a line end in a name', `${a}  data/x%0Ay\n`, 'bag: path'],
    ['a hash of another length', `${a}a  data/x\n`, 'bag: manifest line'],
    ['no path', `${a}  \n`, 'bag: manifest line'],
    ['an empty line between', `${a}  data/x\n\n${a}  data/y\n`, 'bag: manifest line'],
  ])('refuses %s', (_, text, wrong) => {
    expect(code(readManifest('manifest-sha256.txt', utf8(text)))).toBe(wrong);
  });

  it('of the tag files name no payload, and those of the payload nothing else', () => {
    expect(code(readManifest('tagmanifest-sha256.txt', utf8(`${a}  data/x\n`)))).toBe('bag: path');
    expect(readManifest('tagmanifest-sha256.txt', utf8(`${a}  bag-info.txt\n`)).ok).toBe(true);
  });
});

describe('bag-info.txt', () => {
  const info: BagInfo = {
    collection: 'collection/1',
    store: 'store 1',
    day: '2026-10-15',
    entries: 12,
    photos: 2,
    missing: [a, b],
    leftOut: ['names', 'insert values'],
    sculptures: ['sculpture/1', 'sculpture/2'],
    payload: { bytes: 123_456, files: 8 },
  };

  it('comes back as it was written', () => {
    expect(readInfo(utf8(writeInfo(info)))).toEqual({ ok: true, value: info });
    const { sculptures: _, ...whole } = info;
    expect(readInfo(utf8(writeInfo(whole)))).toEqual({ ok: true, value: whole });
  });

  it('passes over what others wrote, and puts folded lines together', () => {
    const read = readInfo(utf8('Contact-Name: A\nExternal-Identifier:   collection/\n\t1\npayload-oxum: 5.1\n'));
    expect(read.ok && read.value).toEqual({
      collection: 'collection/ 1',
      payload: { bytes: 5, files: 1 },
      missing: [],
      leftOut: [],
    });
  });

  it('says nothing of numbers and days that are none', () => {
    const read = readInfo(utf8('Payload-Oxum: many\nSurvey-Entries: -1\nBagging-Date: yesterday\n'));
    expect(read.ok && read.value).toEqual({ missing: [], leftOut: [] });
  });

  it('refuses a line without a label, by its number', () => {
    const read = readInfo(utf8('Survey-Entries: 1\nand then\n'));
    expect(read).toEqual({ ok: false, reason: { code: 'bag: info line', params: { line: 2 } } });
  });
});

it('a photo lies under its hash, and its path says which it is', () => {
  for (const mime of ['image/jpeg', 'image/png', 'image/webp', 'image/heic', 'image/avif'])
    expect(photoAt(photoPath(a, mime))).toEqual({ sha256: a, mime });
  expect(photoPath(a, '../../x')).toBe(`data/photos/${a}.bin`);
  expect(photoAt(`data/photos/${a}.jpg/x`)).toBeUndefined();
  expect(photoAt('data/survey.json')).toBeUndefined();
});
