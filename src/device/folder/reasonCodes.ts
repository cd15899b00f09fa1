import type { Reason } from '../../engine/record';

/** What stands between this device and a folder, with the parameters its sentence may use. The sentences live in src/words/en/reasonsOfFolder.ts. */
export const folderReasons = {
  'folder: no network': [],
  /** Nothing came back, or not all of it. */
  'folder: no answer': [],
  /** Given up after `seconds`. */
  'folder: answer too late': ['seconds'],
  'folder: name with colon': [],
  'folder: password refused': [],
  'folder: not allowed': ['path'],
  /** The server answers, and not as a server of folders. */
  'folder: none there': ['address'],
  'folder: not a folder': ['address'],
  /** It wrote over what was there, although it was asked not to. */
  'folder: written over': ['path'],
  'folder: locked': ['path'],
  'folder: full': [],
  'folder: file too large': ['path', 'megabytes'],
  /** Larger than anything this app writes. */
  'folder: file not ours': ['path'],
  /** Of a folder on a drive. */
  'folder: no room on the drive': [],
  'folder: not let in': [],
  'folder: not to be written': ['path'],
  /** Pulled out, moved or renamed; the browser's word for it. */
  'folder: drive gone': ['said'],
  /** Any other answer: the number of HTTP. */
  'folder: refused': ['status', 'path'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type FolderReasonCode = keyof typeof folderReasons;

type ParamsOf<C extends FolderReasonCode> = { readonly [P in (typeof folderReasons)[C][number]]: string | number };

export const folderReason = <C extends FolderReasonCode>(code: C, params: ParamsOf<C>): Reason => ({ code, params });
