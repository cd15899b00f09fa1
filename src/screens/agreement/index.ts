export { AgreementScreen } from './AgreementScreen';
