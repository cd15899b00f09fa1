export { WalkScreen } from './WalkScreen';
