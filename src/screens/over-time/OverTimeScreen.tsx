import { Page } from '../parts';

export function OverTimeScreen({ sculpture }: { readonly sculpture: string }) {
  return <Page title="OverTime">{sculpture}</Page>;
}
