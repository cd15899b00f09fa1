import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { build } from 'vite';
import { sayReason } from '../../src/words/en/reasons';
import '../../src/words/pastStart';

const fileName = 'folder-code.js';

/** Puts the folder's code beside the app as served, so that a page of the app can load it under its own policy. */
export async function addFolderCode(app: string): Promise<void> {
  await build({
    configFile: false,
    logLevel: 'error',
    publicDir: false,
    build: {
      lib: { entry: 'src/device/folder/davFolder.ts', formats: ['es'], fileName: () => fileName },
      outDir: join(app),
      emptyOutDir: false,
      minify: false,
    },
  });
}

/** What a person would be told where the folder failed. */
export class SaidInPage extends Error {}

type Deed = 'list' | 'get' | 'put' | 'remove';
interface Access {
  readonly root: string;
  readonly name: string;
  readonly password: string;
}

/** The folder as a page of the app has it: each call is made in the page. Bytes travel in base64. */
export function folderInPage(page: Page, access: Access) {
  const call = async (deed: Deed, path: string, given?: Uint8Array) => {
    // As text: what Vitest makes of an import in a function is not for a page.
    await page.evaluate(`import('/${fileName}').then((code) => { globalThis.folderCode = code; })`);
    const told = await page.evaluate(
      async ({ access, deed, path, base64 }) => {
        const { davFolder } = (
          globalThis as unknown as { folderCode: typeof import('../../src/device/folder/davFolder') }
        ).folderCode;
        const text = atob(base64 ?? '');
        const given = new Uint8Array(text.length);
        for (let at = 0; at < text.length; at++) given[at] = text.charCodeAt(at);
        try {
          const folder = davFolder(access);
          const got = deed === 'put' ? await folder.put(path, given) : await folder[deed](path);
          if (!(got instanceof Uint8Array)) return { got };
          let text = '';
          for (let at = 0; at < got.length; at += 32768) text += String.fromCharCode(...got.subarray(at, at + 32768));
          return { base64: btoa(text) };
        } catch (error) {
          const { reason, message } = error as {
            reason?: { code: string; params: Record<string, string | number> };
            message: string;
          };
          return { reason, message };
        }
      },
      { access, deed, path, base64: given && Buffer.from(given).toString('base64') },
    );
    if (told.reason) throw new SaidInPage(sayReason(told.reason));
    if (told.message !== undefined) throw new Error(told.message);
    return told.base64 === undefined ? told.got : new Uint8Array(Buffer.from(told.base64, 'base64'));
  };
  return {
    list: (folder: string) => call('list', folder) as Promise<{ name: string; isFolder: boolean; bytes?: number }[]>,
    get: (path: string) => call('get', path) as Promise<Uint8Array | undefined>,
    put: (path: string, bytes: Uint8Array) => call('put', path, bytes) as Promise<'put' | 'there already'>,
    remove: (path: string) => call('remove', path) as Promise<void>,
  };
}
