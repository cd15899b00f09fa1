import { type InStep, type Joined as JoinedTo, step, switchOff } from '../../actions';
import { date, sayReason, w, whole } from '../../words';
import { Button, Notice, Section } from '../parts';
import { say, useDeed, useDesk } from '../shell';
import { Access } from './Access';
import { UnderWay } from './UnderWay';
import type { useStepping } from './useStepping';
import { WhoIsInIt } from './WhoIsInIt';

const words = w.inStep;

const day = (at: string): string => date(at.slice(0, 10));
const time = (at: string): string => at.slice(11, 16);
const counted = (entries: number, photos: number) =>
  [words.entries(entries, whole(entries)), words.photos(photos, whole(photos))] as const;

interface JoinedProps {
  readonly joined: JoinedTo;
  readonly inStep: InStep;
  readonly stepping: ReturnType<typeof useStepping>;
}

/** On: what is waiting, when it was last in step, what stands against it, and who else is in it. */
export function Joined({ joined, inStep, stepping }: JoinedProps) {
  const desk = useDesk();
  const off = useDeed();
  const { waiting, atHand } = inStep;
  const { last, stopped } = joined;
  const waits = waiting.entries + waiting.photos > 0;
  const byTap = () => stepping.go('joined', (given) => step(desk, { ...given, tapped: true }));
  const out = () =>
    off.run(
      () => switchOff(desk),
      () => say(words.switchedOff),
    );
  // Asked for where the password is typed again, it is told there.
  const toldHere = stepping.at !== undefined && (atHand || stepping.at !== 'server');
  return (
    <>
      <Section title={words.where[joined.way](joined.name)} lead={words.byItself}>
        <p className="strong">{last ? words.lastAt(day(last.at), time(last.at)) : words.never}</p>
        {(last || waits) && (
          <p className={waits ? 'strong' : 'soft'}>
            {waits ? words.waiting(...counted(waiting.entries, waiting.photos)) : words.nothingWaits}
          </p>
        )}
        {last && last.took + last.photosIn > 0 && (
          <p className="soft">{words.came(...counted(last.took, last.photosIn))}</p>
        )}
        {last && last.gave + last.photosOut > 0 && (
          <p className="soft">{words.went(...counted(last.gave, last.photosOut))}</p>
        )}
        {last && last.erased > 0 && <p>{words.erased(last.erased)}</p>}
        {off.refused && <Notice kind="problem" title={off.refused} />}
        {stopped && !stepping.refused && !stepping.far && (
          <Notice kind="caution" title={words.stoppedTitle(day(stopped.at), time(stopped.at))}>
            <p>{sayReason(stopped.reason)}</p>
          </Notice>
        )}
        {toldHere && <UnderWay {...stepping} />}
        {!stepping.far && (
          <div className="row not-printed">
            {atHand && (
              <Button kind="main" onClick={byTap}>
                {words.stepNow}
              </Button>
            )}
            <Button kind="quiet" onClick={out} disabled={off.busy}>
              {words.switchOff}
            </Button>
          </div>
        )}
      </Section>
      {!atHand && joined.way === 'server' && (
        <Section title={words.again}>
          <Access known={joined.account ?? ''} label={words.againDo} stepping={stepping} />
        </Section>
      )}
      {!atHand && joined.way === 'picked' && (
        <Notice
          kind="caution"
          title={words.letInWhat}
          actions={
            <Button kind="main" onClick={byTap}>
              {words.letIn}
            </Button>
          }
        />
      )}
      {last && last.faults.length > 0 && (
        <Section title={words.found}>
          <ul className="in-step-rows bare">
            {last.faults.map(({ fault, problem }) => (
              <li key={`${fault.code} ${fault.params.path}`}>
                <span className="file-name">{sayReason(fault)}</span>
                {problem && <span className="soft file-name">{sayReason(problem)}</span>}
              </li>
            ))}
          </ul>
        </Section>
      )}
      <WhoIsInIt who={inStep.who} />
    </>
  );
}
