export { ConservatorPageScreen } from './ConservatorPageScreen';
export { KeptWhereScreen } from './KeptWhereScreen';
export { PaperScreen } from './PaperScreen';
export { PapersScreen } from './PapersScreen';
