export { davFolder } from './davFolder';
export { type Folder, isPlainName, type Listed, plainPath } from './folder';
export { canPickFolder, type FileHandle, type FolderHandle, mayEnter, pickFolder } from './folderHandle';
export { memoryFolder } from './memoryFolder';
export { pickedFolder } from './pickedFolder';
export { type FolderReasonCode, folderReason, folderReasons } from './reasonCodes';
