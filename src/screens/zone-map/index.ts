export { OutlineScreen } from './OutlineScreen';
export { ZoneMapScreen } from './ZoneMapScreen';
