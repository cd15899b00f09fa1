export { MovesScreen } from './MovesScreen';
