import { w } from '../../words';
import { Page } from '../parts';

const words = w.bring;

export function BringScreen() {
  return (
    <Page title={words.title} lead={words.lead}>
      {null}
    </Page>
  );
}
