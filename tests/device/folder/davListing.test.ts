// @vitest-environment jsdom
import { expect, test } from 'vitest';
import { davListing } from '../../../src/device/folder/davListing';

const folder = new URL('https://survey.example.org/rounds/folder/');
const read = (xml: string) => davListing(new DOMParser().parseFromString(xml, 'application/xml'), folder);
const answer = (...responses: string[]) => read(`<D:multistatus xmlns:D="DAV:">${responses.join('')}</D:multistatus>`);
const response = (href: string, prop = '', status = 'HTTP/1.1 200 OK') =>
  `<D:response><D:href>${href}</D:href><D:propstat><D:prop>${prop}</D:prop><D:status>${status}</D:status></D:propstat></D:response>`;
const folderType = '<D:resourcetype><D:collection/></D:resourcetype>';
const file = (bytes: number) => `<D:resourcetype/><D:getcontentlength>${bytes}</D:getcontentlength>`;

test('the folder itself is not in its own list; folders and files in it are told apart', () => {
  const list = answer(
    response('/rounds/folder/', folderType),
    response('/rounds/folder/photos/', folderType),
    response('/rounds/folder/1.json', file(812)),
  );
  expect(list).toEqual([
    { name: 'photos', isFolder: true },
    { name: '1.json', isFolder: false, bytes: 812 },
  ]);
});

// RFC 4918: any prefix or none, whole addresses or paths, escapes as the server likes, an HTTP version of any number.
test.each([
  [
    'no prefix',
    '<multistatus xmlns="DAV:"><response><href>/rounds/folder/1.json</href><propstat><prop><getcontentlength>3</getcontentlength></prop><status>HTTP/1.1 200 OK</status></propstat></response></multistatus>',
  ],
  [
    'a prefix of its own for properties, white space and a comment',
    '<a:multistatus xmlns:a="DAV:"><a:response xmlns:lp1="DAV:">\n<a:href>\n /rounds/folder/1.json\n</a:href><!-- x --><a:propstat><a:prop><lp1:getcontentlength> 3 </lp1:getcontentlength></a:prop><a:status>HTTP/2 200</a:status></a:propstat></a:response></a:multistatus>',
  ],
  [
    'a whole address, by plain http behind another server',
    `<D:multistatus xmlns:D="DAV:">${response('http://survey.example.org/rounds/folder/1.json', file(3))}</D:multistatus>`,
  ],
  [
    'escapes nobody needs',
    `<D:multistatus xmlns:D="DAV:">${response('/rounds/%66older/%31%2ejson', file(3))}</D:multistatus>`,
  ],
  [
    'properties it does not know under a status of their own',
    `<D:multistatus xmlns:D="DAV:"><D:response><D:href>/rounds/folder/1.json</D:href><D:propstat><D:prop>${file(3)}</D:prop><D:status>HTTP/1.1 200 OK</D:status></D:propstat><D:propstat><D:prop><D:getcontentlength>9</D:getcontentlength>${folderType}</D:prop><D:status>HTTP/1.1 404 Not Found</D:status></D:propstat></D:response></D:multistatus>`,
  ],
])('an answer with %s is read the same', (_, xml) => {
  expect(read(xml)).toEqual([{ name: '1.json', isFolder: false, bytes: 3 }]);
});

test.each([
  ['lies elsewhere on the server', '/rounds/other/1.json'],
  ['lies two levels down', '/rounds/folder/a/1.json'],
  ['climbs out', '/rounds/folder/../1.json'],
  ['climbs out by an escape', '/rounds/folder/%2e%2e%2f1.json'],
  ['is on another host', 'https://other.example.org/rounds/folder/1.json'],
  ['is hidden', '/rounds/folder/.davfs.tmp0001'],
  ['has an escape that is none', '/rounds/folder/%E0%A4.json'],
  ['has a name this app never gives', '/rounds/folder/a%20b.json'],
  ['is no address', 'http://['],
  ['is empty', ''],
])('a thing that %s is passed over', (_, href) => {
  expect(answer(response(href, file(3)), response('/rounds/folder/2.json', file(1)))).toEqual([
    { name: '2.json', isFolder: false, bytes: 1 },
  ]);
});

test.each([
  ['a page', '<html xmlns="http://www.w3.org/1999/xhtml"><body>Sign in</body></html>'],
  ['something else of the same name', '<multistatus/>'],
  ['half of it', '<D:multistatus xmlns:D="DAV:"><D:response>'],
])('an answer that is %s is no list, and not an empty one', (_, xml) => {
  expect(read(xml)).toBeUndefined();
});

test('no answer that the browser could read as XML is no list', () => {
  expect(davListing(null, folder)).toBeUndefined();
});
