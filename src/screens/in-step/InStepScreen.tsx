import { w } from '../../words';
import { Page } from '../parts';

const words = w.inStep;

export function InStepScreen() {
  return (
    <Page title={words.title} lead={words.lead}>
      {null}
    </Page>
  );
}
