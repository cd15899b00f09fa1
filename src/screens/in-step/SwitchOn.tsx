import { switchOnPicked } from '../../actions';
import { w } from '../../words';
import { Button, Notice, Section } from '../parts';
import { useDesk } from '../shell';
import { Access } from './Access';
import { UnderWay } from './UnderWay';
import type { useStepping } from './useStepping';

const words = w.inStep;

interface SwitchOnProps {
  readonly canPick: boolean;
  readonly stepping: ReturnType<typeof useStepping>;
}

/** Off: which folder it may be, and what goes into it. */
export function SwitchOn({ canPick, stepping }: SwitchOnProps) {
  const desk = useDesk();
  const { go, at, far } = stepping;
  return (
    <>
      <Notice kind="caution" title={words.goes}>
        <p>{words.begin}</p>
      </Notice>
      <Section title={words.serverTitle} lead={words.serverLead}>
        <Access label={words.switchOn} stepping={stepping} />
      </Section>
      <Section title={words.pickTitle} lead={canPick ? words.pickLead : words.pickNot}>
        {at === 'picked' && <UnderWay {...stepping} />}
        {canPick && (
          <div className="row not-printed">
            <Button onClick={() => go('picked', (given) => switchOnPicked(desk, given))} disabled={far !== undefined}>
              {words.pick}
            </Button>
          </div>
        )}
      </Section>
    </>
  );
}
