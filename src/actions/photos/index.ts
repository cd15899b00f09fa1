/** Stations, outlines, photos laid on one another, measuring on photos, colour readings: one file a deed. */
export { thingsOf } from './thingsOf';
