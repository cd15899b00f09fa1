import { Page, Reading } from '../parts';

export function NewZoneScreen(_: { readonly sculpture: string }) {
  return (
    <Page title="New zone">
      <Reading />
    </Page>
  );
}
