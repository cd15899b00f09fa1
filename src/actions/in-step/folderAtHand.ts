import {
  canPickFolder,
  davFolder,
  type Folder,
  type FolderHandle,
  mayEnter,
  pickedFolder,
  pickFolder,
} from '../../device/folder';
import type { Desk } from '../desk';
import { refuse } from '../outcome';
import type { Joined } from './joined';
import { stepRefusal } from './reasonCodes';

/** The folder on the server beside the app: the page's own policy lets it ask no other. */
export const folderBeside = './folder/';

/** Folders that can be used without asking anyone. Name and password of a server live here, and end with the page. */
const open = new WeakMap<Desk['store'], Folder>();

const handleKey = 'in step folder';

export const holdFolder = (desk: Desk, folder: Folder | undefined): void => {
  if (folder) open.set(desk.store, folder);
  else open.delete(desk.store);
};

export const onServer = (account: string, password: string): Folder =>
  davFolder({ root: folderBeside, name: account, password });

export { canPickFolder };

/** Asks for a folder, and keeps the way to it on this device; from a tap. `undefined` where the window was closed. */
export const pickedByPerson = async (desk: Desk): Promise<{ folder: Folder; name: string } | undefined> => {
  if (!canPickFolder()) refuse(stepRefusal('step: no picker', {}));
  const handle = await pickFolder();
  if (!handle) return undefined;
  await desk.store.setMeta(handleKey, handle);
  return { folder: pickedFolder(handle), name: handle.name };
};

export const forgetHandle = (desk: Desk): Promise<void> => desk.store.setMeta(handleKey, undefined);

/** Whether the folder can be used without asking; 'ask' where a tap is needed, or name and password. */
export const isAtHand = async (desk: Desk, { way }: Joined): Promise<boolean> => {
  if (open.has(desk.store)) return true;
  const handle = way === 'picked' ? await desk.store.meta<FolderHandle>(handleKey) : undefined;
  return handle !== undefined && (await mayEnter(handle));
};

/** The folder, or the refusal that says what the person has to do first. `ask`, from a tap, asks for a picked folder again. */
export const folderAtHand = async (desk: Desk, { way, name }: Joined, ask = false): Promise<Folder> => {
  const known = open.get(desk.store);
  if (known) return known;
  if (way === 'server') return refuse(stepRefusal('step: password needed', {}));
  const handle = await desk.store.meta<FolderHandle>(handleKey);
  if (!handle || !(await mayEnter(handle, ask))) return refuse(stepRefusal('step: folder to be let in', { name }));
  const folder = pickedFolder(handle);
  holdFolder(desk, folder);
  return folder;
};
