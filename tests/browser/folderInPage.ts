import type { Page } from 'playwright-core';
import { build } from 'vite';
import type { davFolder, Folder, FolderHandle } from '../../src/device/folder';
import type { Reason } from '../../src/engine/record';
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
      lib: { entry: 'src/device/folder/index.ts', formats: ['es'], fileName: () => fileName },
      outDir: app,
      emptyOutDir: false,
      minify: false,
    },
  });
}

/** What a person would be told where the folder failed. */
export class SaidInPage extends Error {}

type Deed = 'list' | 'get' | 'put' | 'remove';
/** One on the server, or one of the browser's own under a name, which stands in for one a person picks. */
type Which = Parameters<typeof davFolder>[0] | { readonly own: string };

/** The folder as a page of the app has it: each call is made in the page. Bytes travel in base64; a signal only as it stood. */
export function folderInPage(page: Page, which: Which): Folder {
  const call = async (deed: Deed, path: string, signal?: AbortSignal, given?: Uint8Array) => {
    // As text: what Vitest makes of an import in a function is not for a page.
    await page.evaluate(`import('/${fileName}').then((code) => { globalThis.folderCode = code; })`);
    const told = await page.evaluate(
      async ({ which, deed, path, base64, off }) => {
        const kept = globalThis as unknown as { folderCode: typeof import('../../src/device/folder') } & {
          folders?: Record<string, Folder>;
        };
        // One object for one folder, as the app holds it: what it does in turn, it does in turn here too.
        kept.folders ??= {};
        const { folders } = kept;
        const key = JSON.stringify(which);
        const { davFolder, pickedFolder } = kept.folderCode;
        if (!folders[key] && 'own' in which) {
          const root = await navigator.storage.getDirectory();
          const handle = await root.getDirectoryHandle(which.own, { create: true });
          folders[key] = pickedFolder(handle as unknown as FolderHandle);
        }
        if (!('own' in which)) folders[key] ??= davFolder(which);
        const folder = folders[key]!;
        const text = atob(base64 ?? '');
        const given = new Uint8Array(text.length);
        for (let at = 0; at < text.length; at++) given[at] = text.charCodeAt(at);
        const signal = off === undefined ? undefined : AbortSignal.abort(off);
        try {
          const got = deed === 'put' ? await folder.put(path, given, signal) : await folder[deed](path, signal);
          if (!(got instanceof Uint8Array)) return { got };
          let text = '';
          for (let at = 0; at < got.length; at += 32768) text += String.fromCharCode(...got.subarray(at, at + 32768));
          return { base64: btoa(text) };
        } catch (error) {
          if (error === off) return { off };
          const { reason, message } = error as { reason?: Reason; message: string };
          return { reason, message };
        }
      },
      {
        which,
        deed,
        path,
        base64: given && Buffer.from(given).toString('base64'),
        off: signal?.aborted ? signal.reason : undefined,
      },
    );
    if (told.off !== undefined) throw told.off;
    if (told.reason) throw new SaidInPage(sayReason(told.reason));
    if (told.message !== undefined) throw new Error(told.message);
    return told.base64 === undefined ? told.got : new Uint8Array(Buffer.from(told.base64, 'base64'));
  };
  return {
    list: (folder, signal) => call('list', folder, signal) as ReturnType<Folder['list']>,
    get: (path, signal) => call('get', path, signal) as ReturnType<Folder['get']>,
    put: (path, bytes, signal) => call('put', path, signal, bytes) as ReturnType<Folder['put']>,
    remove: (path, signal) => call('remove', path, signal) as ReturnType<Folder['remove']>,
  };
}
