export { PaperScreen } from './PaperScreen';
export { PapersScreen } from './PapersScreen';
