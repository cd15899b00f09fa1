export { PlaceScreen } from './PlaceScreen';
