export { useDesk, useShowOpening } from './DeskContext';
export { pathTo } from './paths';
export { say } from './say';
export { useQuestion } from './useQuestion';
