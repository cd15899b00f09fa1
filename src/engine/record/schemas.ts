export { bodySchemas } from './bodies';
export { fraction } from './bounds';
export { coverageBody } from './coverageBody';
export { day, entrySchema, instant, thingName, uuid } from './entry';
export { moneySchema, personInRole } from './moneyBody';
export { pointBody } from './photoBodies';
