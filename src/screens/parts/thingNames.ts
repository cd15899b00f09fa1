/** What things of a record are called, for screens; papers call them the same. */
export {
  namesOfWorks,
  roundName,
  roundNameInFull,
  thingNames,
  type WorkNamed,
  workName,
  worksNamed,
  zoneName,
  zoneOptions,
} from '../../words';
