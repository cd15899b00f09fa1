/** The texts of a bag (RFC 8493, BagIt 1.0), written and read; what lies where in it. Pure: bytes come from elsewhere. */
export { bagLimits } from './bagLimits';
export { declaration, readDeclaration } from './declaration';
export { type BagInfo, readInfo, writeInfo } from './info';
export { type Listed, readManifest, writeManifest } from './manifest';
export { type Sorted, sortedNames } from './names';
export { bagPaths, photoAt, photoPath } from './paths';
export type { BagText } from './readText';
export { type BagReason, bagReason, bagReasons } from './reasonCodes';
export { readEnd, type ZipEnd, zipTail } from './zipEnd';
export { behindAgrees, headerBytes, readDirectory, readHeader, type ZipEntry } from './zipHeaders';
