export { leaveEyeCheck, patchesInCheck, removeEyeCheck, sayPatch, startEyeCheck, takeBackPatch } from './deeds';
export { eyesOf } from './eyesOf';
export { type EyeCheckUnderWay, eyeCheckUnderWay } from './underWay';
