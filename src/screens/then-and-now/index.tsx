import { Page, Reading } from '../parts';

export function ThenAndNowScreen(_: { readonly sculpture: string; readonly earlier: string | undefined; readonly later: string | undefined }) {
  return (
    <Page title="Then and now">
      <Reading />
    </Page>
  );
}
