import { Page, Reading } from '../parts';

export function CarryScreen() {
  return (
    <Page title="Carry">
      <Reading />
    </Page>
  );
}
