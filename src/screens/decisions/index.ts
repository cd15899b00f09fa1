export { DecisionsScreen } from './DecisionsScreen';
