import { Page, Reading } from '../parts';

export function MethodScreen() {
  return (
    <Page title="Method">
      <Reading />
    </Page>
  );
}
