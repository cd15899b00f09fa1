import type { NeedOf, OrderOfNeed } from '../../engine/condition';
import { w } from '../../words';
import { Section } from '../parts';
import { Reasons } from '../parts/Reasons';

const words = w.nextSteps;

/** What would speak to the order and is not known yet, said once for the page, so that silence is not read as "no". */
export function HowFirm({ order, needs }: { readonly order: OrderOfNeed; readonly needs: readonly NeedOf[] }) {
  const open = [
    ...order.zones.flatMap(({ reasons }) => reasons),
    ...needs.flatMap(({ classes }) => classes.zones.flatMap(({ urgency }) => urgency.notYetKnown)),
  ].filter(({ code }) => code === 'not yet known');
  const first = new Map(open.map((reason) => [String(reason.params.what), reason]));
  if (first.size === 0) return null;
  return (
    <Section title={words.firm} lead={words.firmWhat}>
      <Reasons reasons={[...first.values()]} />
    </Section>
  );
}
