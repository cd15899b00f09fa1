import { Page, Reading } from '../parts';

export function NewSculptureScreen() {
  return (
    <Page title="New sculpture">
      <Reading />
    </Page>
  );
}
