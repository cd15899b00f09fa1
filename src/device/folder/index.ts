export { davFolder } from './davFolder';
export { type FolderReasonCode, folderReason, folderReasons } from './reasonCodes';
