import { useState } from 'react';
import {
  findingsTable,
  type Prepared,
  type PrepareOptions,
  prepareSurvey,
  sculptureList,
  type Without,
} from '../../actions';
import { sayReason, w } from '../../words';
import { Button, Choice, Choices, Notice, Reading, Section } from '../parts';
import { useDesk, useQuestion } from '../shell';
import { Leaving } from './Leaving';
import { Progress } from './Progress';

const words = w.carry;
const withouts = Object.keys(words.without) as readonly Without[];
type Make = 'survey' | 'table';

/** Choose, prepare, see what the file still holds, and only then let it leave. */
export function CarryOut() {
  const desk = useDesk();
  const works = useQuestion(sculptureList(desk));
  const [which, setWhich] = useState<'all' | 'some'>('all');
  const [some, setSome] = useState<readonly string[]>([]);
  const [without, setWithout] = useState<readonly Without[]>([]);
  const [prepared, setPrepared] = useState<Prepared | undefined>();
  const [preparing, setPreparing] = useState(false);
  const [fault, setFault] = useState('');
  if (!works) return <Reading />;

  /** A file made from another choice must not leave under this one. */
  const changed = () => {
    setPrepared(undefined);
    setFault('');
  };
  const none = which === 'some' && some.length === 0;
  const prepare = async (make: Make) => {
    changed();
    if (none) {
      setFault(words.outSomeNone);
      return;
    }
    setPreparing(true);
    const options: PrepareOptions = { ...(which === 'some' ? { sculptures: some } : {}), without };
    const outcome = await (make === 'survey' ? prepareSurvey : findingsTable)(desk, options);
    setPreparing(false);
    if (outcome.ok) setPrepared(outcome.prepared);
    else setFault(sayReason(outcome.reason));
  };

  return (
    <Section title={words.out}>
      {works.length === 0 ? (
        <p className="soft">{words.noSculptures}</p>
      ) : (
        <>
          <Choice
            label={words.outWhich}
            value={which}
            onChange={(value) => {
              changed();
              setWhich(value);
            }}
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
              onChange={(values) => {
                changed();
                setSome(values);
              }}
              options={works.map(({ thing, body }) => ({ value: thing, label: body.title, detail: body.number }))}
            />
          )}
          <Choices
            label={words.leaveOut}
            values={without}
            onChange={(values) => {
              changed();
              setWithout(values);
            }}
            options={withouts.map((value) => ({ value, label: words.without[value] }))}
          />
          <div className="row">
            <Button kind="main" onClick={() => prepare('survey')} disabled={preparing}>
              {words.prepare}
            </Button>
            <Button kind="quiet" onClick={() => prepare('table')} disabled={preparing}>
              {words.csv}
            </Button>
          </div>
          {preparing && <Progress label={words.preparing} />}
          {fault && <Notice kind="problem" title={fault} />}
          {prepared && <Leaving key={prepared.name} prepared={prepared} />}
        </>
      )}
    </Section>
  );
}
