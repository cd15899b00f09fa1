import { afterEach, expect, test, vi } from 'vitest';
import { saveByPicker, saveByShare, saveWays } from '../../src/device/files';

afterEach(() => vi.unstubAllGlobals());

const file = new File(['{}'], 'a.survey.json', { type: 'application/json' });

const browser = (navigator: object, more: object = {}) => {
  vi.stubGlobal('navigator', navigator);
  for (const [name, value] of Object.entries(more)) vi.stubGlobal(name, value);
};

test('a browser without a picker or a share sheet offers the download and the text', () => {
  browser({});
  expect(saveWays(file)).toEqual(['download', 'text']);
});

test('an app on an iPad home screen is not offered a download, which would trap the person in a viewer', () => {
  browser({ standalone: true, canShare: () => true });
  expect(saveWays(file)).toEqual(['share', 'text']);
});

test('a large file is not offered as text', () => {
  browser({});
  expect(saveWays(new File([new Uint8Array(400_000)], 'large.json'))).toEqual(['download']);
});

test('where the sheet takes no JSON the same bytes go as a text file', async () => {
  const shared: File[] = [];
  const takes = ({ files }: { files: File[] }) => files.every(({ type }) => type === 'text/plain');
  browser({ canShare: takes, share: async ({ files }: { files: File[] }) => void shared.push(...files) });
  await saveByShare(file);
  expect(shared.map(({ name, type }) => [name, type])).toEqual([['a.survey.json.txt', 'text/plain']]);
  expect(await shared[0]?.text()).toBe('{}');
});

test.each([
  ['AbortError', 'save cancelled'],
  ['NotAllowedError', 'save refused'],
])('a sheet that ends with %s is told as "%s"', async (name, code) => {
  browser({ canShare: () => true, share: () => Promise.reject(new DOMException('said', name)) });
  await expect(saveByShare(file)).rejects.toMatchObject({ reason: { code } });
});

test('the picker writes every byte and closes the file', async () => {
  const written: Blob[] = [];
  let closed = 0;
  const writable = { write: async (data: Blob) => void written.push(data), close: async () => void closed++ };
  browser({}, { showSaveFilePicker: async () => ({ createWritable: async () => writable }) });
  expect(saveWays(file)[0]).toBe('picker');
  await saveByPicker(file);
  expect([await written[0]?.text(), closed]).toEqual(['{}', 1]);
});
