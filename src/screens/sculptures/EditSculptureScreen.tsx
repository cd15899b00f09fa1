import { Page, Reading } from '../parts';

export function EditSculptureScreen(_: { readonly sculpture: string }) {
  return (
    <Page title="Edit">
      <Reading />
    </Page>
  );
}
