import { Page, Reading } from '../parts';

export function LogbookScreen(_: { readonly sculpture: string }) {
  return (
    <Page title="Logbook">
      <Reading />
    </Page>
  );
}
