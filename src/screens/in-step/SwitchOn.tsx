import { switchOnPicked } from '../../actions';
import { w } from '../../words';
import { Button, Notice, Section } from '../parts';
import { useDesk } from '../shell';
import { Access } from './Access';
import { UnderWay } from './UnderWay';
import { useStepping } from './useStepping';

const words = w.inStep;

/** Off: which folder it may be, and what goes into it. */
export function SwitchOn({ canPick }: { readonly canPick: boolean }) {
  const desk = useDesk();
  const stepping = useStepping();
  const { go, far, refused } = stepping;
  return (
    <>
      <Notice kind="caution" title={words.goes}>
        <p>{words.begin}</p>
      </Notice>
      {refused && <Notice kind="problem" title={refused} />}
      <UnderWay {...stepping} />
      <Section title={words.serverTitle} lead={words.serverLead}>
        <Access label={words.switchOn} stepping={stepping} />
      </Section>
      <Section title={words.pickTitle} lead={canPick ? words.pickLead : words.pickNot}>
        {canPick && (
          <div className="row not-printed">
            <Button onClick={() => go((given) => switchOnPicked(desk, given))} disabled={far !== undefined}>
              {words.pick}
            </Button>
          </div>
        )}
      </Section>
    </>
  );
}
