import { Page } from '../parts';

export function AgreementScreen({
  sculpture,
}: {
  readonly sculpture: string;
  readonly one?: string | undefined;
  readonly other?: string | undefined;
}) {
  return <Page title="Agreement">{sculpture}</Page>;
}
