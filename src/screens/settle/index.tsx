import { Page, Reading } from '../parts';

export function SettleScreen() {
  return (
    <Page title="Settle">
      <Reading />
    </Page>
  );
}
