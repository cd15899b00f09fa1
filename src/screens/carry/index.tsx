export { CarryScreen } from './CarryScreen';
