export { MoneyRulesScreen } from './MoneyRulesScreen';
