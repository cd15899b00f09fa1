export { IncidentsScreen } from './IncidentsScreen';
