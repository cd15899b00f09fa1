import { Page, Reading } from '../parts';

export function LookScreen(_: { readonly sculpture: string }) {
  return (
    <Page title="Look">
      <Reading />
    </Page>
  );
}
