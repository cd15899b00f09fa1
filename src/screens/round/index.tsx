import { Page, Reading } from '../parts';

export function StartRoundScreen(_: { readonly sculpture: string }) {
  return (
    <Page title="Start a round">
      <Reading />
    </Page>
  );
}

export function RoundScreen(_: { readonly round: string }) {
  return (
    <Page title="Round">
      <Reading />
    </Page>
  );
}

export function ZoneScreen(_: { readonly round: string; readonly zone: string }) {
  return (
    <Page title="Zone">
      <Reading />
    </Page>
  );
}

export function EndRoundScreen(_: { readonly round: string }) {
  return (
    <Page title="End of the round">
      <Reading />
    </Page>
  );
}
