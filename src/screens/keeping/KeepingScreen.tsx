import { w } from '../../words';
import { Page } from '../parts';

const words = w.keeping;

export function KeepingScreen() {
  return (
    <Page title={words.title} lead={words.lead}>
      {null}
    </Page>
  );
}
