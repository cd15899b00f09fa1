/** The check before a day in the field. */
export { ReadyScreen } from './ReadyScreen';
