/** The texts of a bag (RFC 8493, BagIt 1.0), written and read; what lies where in it. Pure: bytes come from elsewhere. */
export { declaration, readDeclaration } from './declaration';
export { type BagInfo, readInfo, writeInfo } from './info';
export { type Listed, readManifest, writeManifest } from './manifest';
export { bagPaths, photoAt, photoPath } from './paths';
export type { BagText } from './readText';
export { type BagReason, bagReason, bagReasons } from './reasonCodes';
