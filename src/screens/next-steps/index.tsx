import { Page, Reading } from '../parts';

export function NextStepsScreen() {
  return (
    <Page title="Next steps">
      <Reading />
    </Page>
  );
}
