import type { NeedOf, OrderOfNeed } from '../../engine/condition';
import type { Firmness } from '../../engine/firmness';
import { w } from '../../words';
import { Section } from '../parts';
import { Reasons } from '../parts/Reasons';
import { UnderWay } from '../shell';

const words = w.nextSteps;

interface HowFirmProps {
  readonly order: OrderOfNeed;
  readonly needs: readonly NeedOf[];
  /** Null until it was worked out. */
  readonly firmness: Firmness | null;
}

/** How far the order may be leant on, and what would speak to it and is not known yet: said once for the page. */
export function HowFirm({ order, needs, firmness }: HowFirmProps) {
  const open = [
    ...order.zones.flatMap(({ reasons }) => reasons),
    ...needs.flatMap(({ classes }) => classes.zones.flatMap(({ urgency }) => urgency.notYetKnown)),
  ].filter(({ code }) => code === 'not yet known');
  const first = new Map(open.map((reason) => [String(reason.params.what), reason]));
  const asked = firmness?.zones.filter(({ word }) => word !== null) ?? [];
  const firm = asked.filter(({ word }) => word === 'firm').length;
  return (
    <Section title={words.firm}>
      {asked.length > 0 && <p>{words.firmCount(firm, asked.length)}</p>}
      {firmness && <Reasons reasons={firmness.reasons} />}
      <UnderWay what="firmness" />
      {first.size > 0 && (
        <>
          <p className="soft">{words.firmWhat}</p>
          <Reasons reasons={[...first.values()]} />
        </>
      )}
    </Section>
  );
}
