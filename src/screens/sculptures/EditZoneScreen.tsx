import { Page, Reading } from '../parts';

export function EditZoneScreen(_: { readonly sculpture: string; readonly zone: string }) {
  return (
    <Page title="Zone">
      <Reading />
    </Page>
  );
}
