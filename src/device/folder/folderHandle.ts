import { StoreProblem } from '../storeProblem';
import { folderReason } from './reasonCodes';

/** What this app needs of a folder handed over by the browser (File System Access, WICG; File System, WHATWG). */
export interface FolderHandle {
  readonly kind: 'directory';
  readonly name: string;
  values(): AsyncIterable<FolderHandle | FileHandle>;
  getDirectoryHandle(name: string, options?: { readonly create?: boolean }): Promise<FolderHandle>;
  getFileHandle(name: string, options?: { readonly create?: boolean }): Promise<FileHandle>;
  removeEntry(name: string): Promise<void>;
  /** Not there where the browser gives the folder to the page alone, and never asks. */
  queryPermission?(asked: { readonly mode: 'readwrite' }): Promise<PermissionState>;
  requestPermission?(asked: { readonly mode: 'readwrite' }): Promise<PermissionState>;
}

export interface FileHandle {
  readonly kind: 'file';
  readonly name: string;
  getFile(): Promise<Blob>;
  /** What is written shows under the name only once it is closed. */
  createWritable(): Promise<{
    write(bytes: BufferSource): Promise<void>;
    close(): Promise<void>;
    abort(): Promise<void>;
  }>;
}

type Picker = (options: { readonly id: string; readonly mode: 'readwrite' }) => Promise<FolderHandle>;

const picker = (): Picker | undefined =>
  (globalThis as { readonly showDirectoryPicker?: Picker }).showDirectoryPicker?.bind(globalThis);

/** Whether this browser lets a person give a page a folder. */
export const canPickFolder = (): boolean => picker() !== undefined;

/** Asks for a folder; from a tap. `undefined` where the person closed the window. */
export const pickFolder = async (): Promise<FolderHandle | undefined> => {
  try {
    return await picker()?.({ id: 'in-step', mode: 'readwrite' });
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return undefined;
    throw new StoreProblem(folderReason('folder: not let in', {}), error);
  }
};

/** Whether the page may go into the folder now. Browsers forget it when the app is closed; `ask`, from a tap, asks the person again. */
export const mayEnter = async (handle: FolderHandle, ask = false): Promise<boolean> => {
  const mode = { mode: 'readwrite' } as const;
  try {
    return (
      ((await (ask ? handle.requestPermission?.(mode) : handle.queryPermission?.(mode))) ?? 'granted') === 'granted'
    );
  } catch {
    // A browser that wants a fresh tap for it, or has forgotten the folder.
    return false;
  }
};
