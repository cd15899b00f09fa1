export { type FolderReasonCode, folderReason, folderReasons } from './reasonCodes';
