import { spoken } from '../tongue';
import type { Params } from './sentence';

/** What stands between the tablet and the folder it keeps in step with: what is wrong, and what to do. */
export const reasonsOfFolder = spoken('reasonsOfFolder', 'reasonsOfFolder', {
  'folder: no network': () =>
    'There is no network. What is waiting stays here and goes the next time you keep in step.',
  'folder: no answer': () =>
    'The server did not answer, or broke off in the middle. Nothing is lost; try again when the network is better.',
  'folder: answer too late': (s) =>
    `The server did not answer within ${s.number('seconds')} seconds. Nothing is lost; try again when the network is better.`,
  'folder: name with colon': () => 'A name for the server cannot have a colon in it. Type it again.',
  'folder: password refused': () => 'The server did not take this name and password. Type both again.',
  'folder: not allowed': (s) =>
    `The server does not let this name do that in its folder (${s.text('path')}). Ask whoever looks after the server.`,
  'folder: none there': (s) =>
    `This server keeps no folder at ${s.text('address')}. Ask whoever looks after the server to set it up, or carry by files.`,
  'folder: not a folder': (s) =>
    `What answers at ${s.text('address')} is a page and not a folder: a network that wants you to sign in first, or a server set up otherwise. Sign in to the network, or ask whoever looks after the server.`,
  'folder: written over': (s) =>
    `The server wrote over “${s.text('path')}”, which was there already, although it was asked not to. A folder like this cannot be shared safely: switch it off here, and show this to whoever looks after the server.`,
  'folder: locked': (s) =>
    `Another program has locked “${s.text('path')}” on the server. Try again later; if it stays, ask whoever looks after the server.`,
  'folder: full': () =>
    'The server has no room left. What is waiting stays here; ask whoever looks after the server to make room.',
  'folder: file too large': (s) =>
    `“${s.text('path')}” is larger than the server takes (${s.number('megabytes', 1)} MB). It stays here; carry it by a file, or ask whoever looks after the server.`,
  'folder: file not ours': (s) =>
    `“${s.text('path')}” in the folder is larger than anything this app writes, so it is not read. Ask whoever put it there.`,
  'folder: no room on the drive': () =>
    'There is no room left where the folder lies. What is waiting stays here; make room there, and keep in step again.',
  'folder: not let in': () => 'The browser does not let this app into the folder. Let it in again.',
  'folder: not to be written': (s) =>
    `“${s.text('path')}” cannot be written in the folder: it is locked, or the drive is for reading only. Free it, or choose another folder.`,
  'folder: drive gone': (s) =>
    `The folder cannot be reached (${s.text('said')}). Put the drive back in, or choose the folder again if it was moved or renamed.`,
  'folder: refused': (s) =>
    `The server refused “${s.text('path')}” (answer ${s.text('status')}). Try again later; if it stays, tell whoever looks after the server that number.`,
} satisfies Readonly<Record<string, (s: Params) => string>>);
