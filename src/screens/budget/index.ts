export { BudgetScreen } from './BudgetScreen';
