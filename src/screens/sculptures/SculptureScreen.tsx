import { Page, Reading } from '../parts';

export function SculptureScreen(_: { readonly sculpture: string }) {
  return (
    <Page title="Sculpture">
      <Reading />
    </Page>
  );
}
