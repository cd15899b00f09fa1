/** Washing, waxing and what goes with it: products, methods, a season's log, and what was ever taken off the metal. */
export { type AreaDone, areaDone } from './areaDone';
export { methodSheetAgainst, productAgainst, treatmentAgainst } from './checks';
export { type OtherProduct, otherProduct, sameProduct } from './lastOn';
export { type LedgerLine, type MetalLedger, metalLedger } from './metalLedger';
export { type MethodsOn, methodsOn } from './methodsOn';
export { type CareReason, careReasons } from './reasonCodes';
export { isInYear, type Season, seasonOf, seasonsOf } from './season';
export { orderList, type StoreFlag, type StoreRow, storeOf, type ToOrder } from './store';
