export { FundScreen } from './FundScreen';
export { FundsScreen } from './FundsScreen';
