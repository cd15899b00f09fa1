import { Page, Reading } from '../parts';

export function ZonesScreen(_: { readonly sculpture: string }) {
  return (
    <Page title="Zones">
      <Reading />
    </Page>
  );
}
