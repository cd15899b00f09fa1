export { bodySchemas } from './bodies';
export { day, entrySchema, instant, thingName } from './entry';
