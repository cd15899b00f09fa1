export { davFolder } from './davFolder';
export { type Folder, isPlainName, type Listed, plainPath } from './folder';
export { memoryFolder } from './memoryFolder';
export { type FolderReasonCode, folderReason, folderReasons } from './reasonCodes';
