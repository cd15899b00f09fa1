export { type ColumnUse, columnUses, namesColumns, proposedUses } from './columns';
export { folded } from './folded';
export { matchWork, matchZones, type WorkHere } from './matching';
export { type DayOrder, needsOrder, orderOf, readDay } from './readDay';
export {
  type BroughtTreatment,
  cellsFor,
  idOfTreatment,
  type Reading,
  type RowRead,
  readList,
  typeNamed,
} from './readList';
export { type BringReason, bringReason, bringReasons } from './reasonCodes';
export { type Delimiter, type ListRow, type Rows, splitRows } from './splitRows';
export { type BroughtStatement, idOfStatement, statementsIn } from './statements';
