/** One thing right in a folder. `bytes` where the folder says it of a file. */
export interface Listed {
  readonly name: string;
  readonly isFolder: boolean;
  readonly bytes?: number;
}

/**
 * A folder several devices share. Files in it are written once and never again, each by one device. Paths are plain
 * names with slashes between, from the folder down. Each deed rejects with a StoreProblem a person can read, or with the
 * signal's own reason where it was called off. What a folder must hold to is tests/device/folder/contract.ts.
 */
export interface Folder {
  /** What is right in a folder; `''` is the whole. A folder that is not there holds nothing; names the app never gives are passed over. */
  list(folder: string, signal?: AbortSignal): Promise<readonly Listed[]>;
  /** The bytes of a file, or `undefined` where there is none. */
  get(path: string, signal?: AbortSignal): Promise<Uint8Array<ArrayBuffer> | undefined>;
  /** Writes a file that is not there yet, whole or not at all, with the folders on the way to it. One that is there is left as it is. */
  put(path: string, bytes: Uint8Array<ArrayBuffer>, signal?: AbortSignal): Promise<'put' | 'there already'>;
  /** Takes a file away. One that is not there is taken away already. */
  remove(path: string, signal?: AbortSignal): Promise<void>;
}

/** Names of one step, which need no escape anywhere: what the app gives, and nothing hidden. */
export const isPlainName = (name: string): boolean => /^[A-Za-z0-9_-][A-Za-z0-9._-]*$/.test(name);

/** The path as given; throws where it is none of this app's, since it could lead out of the folder. */
export function plainPath(path: string): string {
  if (!path.split('/').every(isPlainName)) throw new Error(`Not a path of this app: ${path}`);
  return path;
}
