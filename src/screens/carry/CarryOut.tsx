import { useEffect, useRef, useState } from 'react';
import {
  type BagPrepared,
  bagSize,
  canSaveStraight,
  findingsTable,
  type Prepared,
  prepareBag,
  prepareSurvey,
  sculptureList,
  type Without,
} from '../../actions';
import type { Reason } from '../../engine/record';
import { bytes, sayReason, w, whole } from '../../words';
import { Button, Choice, Choices, Notice, Progress, Reading, Section } from '../parts';
import { say, useDesk, useQuestion } from '../shell';
import { Leaving } from './Leaving';

const words = w.carry;
const withouts = Object.keys(words.without) as readonly Without[];
type Make = 'bag' | 'survey' | 'table';
interface HowFar {
  readonly stage: string;
  readonly done: number;
  readonly all: number;
}

const labelOf = (make: Make, far: HowFar | 'begun'): string => {
  if (make !== 'bag') return words.preparing;
  return far !== 'begun' && far.stage === 'reading back' ? words.readingBack : words.preparingBag;
};

/** Choose, prepare, see what the file still holds, and only then let it leave. */
export function CarryOut({ only }: { readonly only?: string | undefined }) {
  const desk = useDesk();
  const works = useQuestion(sculptureList(desk));
  const [make, setMake] = useState<Make>('bag');
  const [which, setWhich] = useState<'all' | 'some'>(only ? 'some' : 'all');
  const [some, setSome] = useState<readonly string[]>(only ? [only] : []);
  const [without, setWithout] = useState<readonly Without[]>([]);
  const [prepared, setPrepared] = useState<Prepared | BagPrepared | undefined>();
  const [preparing, setPreparing] = useState<HowFar | 'begun' | undefined>();
  const [fault, setFault] = useState<Reason | 'none chosen' | undefined>();
  const leaving = useRef(new AbortController());
  const size = useQuestion(bagSize(desk, which === 'some' ? some : undefined));
  /** The bag that lies ready, to be let go of with the screen or the choice. A download goes on behind the page: that one is swept when the app is next opened. */
  const lying = useRef<BagPrepared | undefined>(undefined);
  const letGo = () => {
    leaving.current.abort();
    void lying.current?.letGo();
    lying.current = undefined;
  };
  useEffect(
    () => () => {
      leaving.current.abort();
      void lying.current?.letGo();
    },
    [],
  );
  if (!works) return <Reading />;

  /** A file made from another choice must not leave under this one. */
  const changed =
    <T,>(set: (value: T) => void) =>
    (value: T) => {
      letGo();
      setPrepared(undefined);
      setFault(undefined);
      setPreparing(undefined);
      set(value);
    };
  const none = which === 'some' && some.length === 0;
  const prepare = async (straight = false) => {
    if (none) return changed(setFault)('none chosen');
    changed(setPreparing)('begun');
    leaving.current = new AbortController();
    const { signal } = leaving.current;
    const choice = { ...(which === 'some' ? { sculptures: some } : {}), without };
    const outcome =
      make === 'bag'
        ? await prepareBag(desk, { ...choice, straight, signal, heard: (far) => !signal.aborted && setPreparing(far) })
        : await { survey: prepareSurvey, table: findingsTable }[make](desk, choice);
    if (signal.aborted) {
      if (outcome.ok && outcome.prepared && 'letGo' in outcome.prepared) void outcome.prepared.letGo();
      return;
    }
    setPreparing(undefined);
    if (!outcome.ok) return setFault(outcome.reason);
    if (outcome.prepared && 'letGo' in outcome.prepared) lying.current = outcome.prepared;
    setPrepared(outcome.prepared);
  };
  const leaveOff = () => {
    leaving.current.abort();
    setPreparing(undefined);
    say(words.outLeft);
  };
  const full =
    fault !== undefined && fault !== 'none chosen' && fault.code === 'no room for a bag' && canSaveStraight();

  return (
    <Section title={words.out}>
      {works.length === 0 ? (
        <p className="soft">{words.noSculptures}</p>
      ) : (
        <>
          <Choice
            label={words.make}
            tiles="full"
            value={make}
            onChange={changed(setMake)}
            options={(['bag', 'survey', 'table'] as const).map((value) => ({
              value,
              label: words.makes[value],
              detail: words.makesWhat[value],
            }))}
          />
          <Choice
            label={words.outWhich}
            value={which}
            onChange={changed(setWhich)}
            options={[
              { value: 'all', label: words.outAll },
              { value: 'some', label: words.outSome },
            ]}
          />
          {which === 'some' && (
            <Choices
              label={words.outSome}
              labelUnseen
              values={some}
              onChange={changed(setSome)}
              options={works.map(({ thing, body }) => ({ value: thing, label: body.title, detail: body.number }))}
            />
          )}
          <Choices
            label={words.leaveOut}
            values={without}
            onChange={changed(setWithout)}
            options={withouts.map((value) => ({ value, label: words.without[value] }))}
          />
          {make === 'bag' && size && !none && (
            <p>
              {words.bagSize(size.photos, whole(size.photos), bytes(size.photoBytes))}
              {size.missing > 0 && ` ${words.bagMissing(size.missing, whole(size.missing))}`}
            </p>
          )}
          <div className="row">
            <Button kind="main" onClick={() => prepare()} disabled={preparing !== undefined}>
              {words.prepares[make]}
            </Button>
          </div>
          {preparing && (
            <Progress
              label={labelOf(make, preparing)}
              {...(preparing === 'begun' ? {} : { done: preparing.done, all: preparing.all })}
              {...(make === 'bag' ? { onCancel: leaveOff } : {})}
            />
          )}
          {fault && <Notice kind="problem" title={fault === 'none chosen' ? words.outSomeNone : sayReason(fault)} />}
          {full && (
            <div className="row">
              <Button onClick={() => prepare(true)}>{words.straight}</Button>
            </div>
          )}
          {prepared && (
            <Leaving
              key={prepared.name}
              prepared={prepared}
              onDownload={() => {
                lying.current = undefined;
              }}
            />
          )}
        </>
      )}
    </Section>
  );
}
