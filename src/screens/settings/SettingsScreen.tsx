import { Page, Reading } from '../parts';

export function SettingsScreen() {
  return (
    <Page title="Settings">
      <Reading />
    </Page>
  );
}
