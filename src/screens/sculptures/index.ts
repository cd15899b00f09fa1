export { EditSculptureScreen } from './EditSculptureScreen';
export { EditZoneScreen } from './EditZoneScreen';
export { NewSculptureScreen } from './NewSculptureScreen';
export { NewZoneScreen } from './NewZoneScreen';
export { SculptureListScreen } from './SculptureListScreen';
export { SculptureScreen } from './SculptureScreen';
export { WelcomeScreen } from './WelcomeScreen';
export { ZonesScreen } from './ZonesScreen';
