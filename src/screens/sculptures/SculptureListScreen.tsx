import { Page, Reading } from '../parts';

export function SculptureListScreen() {
  return (
    <Page title="Sculptures">
      <Reading />
    </Page>
  );
}
