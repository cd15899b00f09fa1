export { TourStrip } from './TourStrip';
