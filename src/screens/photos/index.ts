export { PhotosScreen } from './PhotosScreen';
export { ViewfinderScreen } from './ViewfinderScreen';
