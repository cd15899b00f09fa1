/** How far two people who judged the same zones of one work agreed. */
export { type Agreement, type Apart, agreementOf } from './agreementOf';
export { type DoneTwice, roundsDoneTwice } from './doneTwice';
export { type Icc, type IccForm, icc } from './icc';
export { cohensKappa, type Kappa, weightedKappa } from './kappa';
export { type AgreementReason, agreementReasons } from './reasonCodes';
