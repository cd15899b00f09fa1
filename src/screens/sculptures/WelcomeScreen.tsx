import { Page, Reading } from '../parts';

export function WelcomeScreen() {
  return (
    <Page title="Welcome">
      <Reading />
    </Page>
  );
}
