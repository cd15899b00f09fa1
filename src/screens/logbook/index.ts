export { LogbookScreen } from './LogbookScreen';
