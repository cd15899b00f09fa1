export { useCollections, useDesk } from './DeskContext';
export { LastFiles } from './LastFiles';
export { noAnswer } from './noAnswer';
export { PixelsUnderWay } from './PixelsUnderWay';
export { pathTo } from './paths';
export { say } from './say';
export { UnderWay } from './UnderWay';
export { useDeed } from './useDeed';
export { useQuestion } from './useQuestion';
