export { MethodScreen } from './MethodScreen';
