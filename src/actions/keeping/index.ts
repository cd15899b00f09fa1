export { type Carried, type CarriedRow, carriedOut } from './carriedOut';
