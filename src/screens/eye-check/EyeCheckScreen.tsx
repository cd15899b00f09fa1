import { useState } from 'react';
import {
  eyeCheckUnderWay,
  eyesOf,
  leaveEyeCheck,
  patchesInCheck,
  type SurveyorRow,
  settings,
  startEyeCheck,
  surveyors,
  tabs,
} from '../../actions';
import { w } from '../../words';
import { Button, Choice, LinkButton, Notice, Page, Reading, Section } from '../parts';
import { pathTo, say, useDeed, useDesk, useQuestion } from '../shell';
import { CurveShown } from './CurveShown';
import { Drill } from './Drill';
import { EarlierChecks } from './EarlierChecks';
import { WhatIsKnown } from './WhatIsKnown';
import './eyeCheck.css';

const words = w.eyeCheck;

/** A two-minute drill on patches of known coverage, and what is known of an eye from it and from zones asked again. */
export function EyeCheckScreen() {
  const people = useQuestion(surveyors(useDesk()));
  const { surveyor } = useQuestion(settings);
  const [chosen, setChosen] = useState<string>();
  const [going, setGoing] = useState(false);
  if (!people) return <Reading />;
  const wanted = chosen ?? surveyor;
  const person = people.find(({ thing }) => thing === wanted) ?? (people.length === 1 ? people[0] : undefined);
  if (going && person) return <Drill person={person} onStop={() => setGoing(false)} />;
  return (
    <Page title={words.title} lead={words.lead}>
      {people.length === 0 && (
        <Notice title={words.nobody} actions={<LinkButton to={pathTo.settings()}>{words.toSettings}</LinkButton>}>
          <p>{words.nobodyWhat}</p>
        </Notice>
      )}
      {people.length > 1 && (
        <div className="not-printed">
          <Choice
            label={words.who}
            hint={words.whoHint}
            options={people.map(({ thing, role, name }) => ({ value: thing, label: role, detail: name }))}
            value={person?.thing}
            onChange={setChosen}
          />
        </div>
      )}
      {person && <OnePerson key={person.thing} person={person} onGo={() => setGoing(true)} />}
    </Page>
  );
}

interface OnePersonProps {
  readonly person: SurveyorRow;
  readonly onGo: () => void;
}

function OnePerson({ person, onGo }: OnePersonProps) {
  const desk = useDesk();
  const at = useQuestion(eyeCheckUnderWay(desk, person.thing));
  const known = useQuestion(eyesOf(desk));
  const { mode } = useQuestion(tabs(desk));
  if (at === undefined || known === undefined) return <Reading />;
  const checks = known.checks.filter(({ body }) => body.surveyor === person.thing);
  const eye = known.eyes[person.thing];
  const fixed = mode !== 'writing';
  return (
    <>
      {fixed ? (
        <Notice title={words.readingOnly} />
      ) : (
        <div className="not-printed">
          <ToBegin surveyor={person.thing} done={at?.patches.length} earlier={checks.length} onGo={onGo} />
        </div>
      )}
      <WhatIsKnown who={person.role} eye={eye} checks={checks.length} />
      {eye?.curve && <CurveShown curve={eye.curve} checks={checks} />}
      <EarlierChecks checks={checks} fixed={fixed} />
    </>
  );
}

interface ToBeginProps {
  readonly surveyor: string;
  /** Patches judged of a check that is not finished; undefined where none was begun. */
  readonly done: number | undefined;
  readonly earlier: number;
  readonly onGo: () => void;
}

function ToBegin({ surveyor, done, earlier, onGo }: ToBeginProps) {
  const desk = useDesk();
  const { run, refused, busy } = useDeed();
  const begin = () => void run(() => startEyeCheck(desk, surveyor), onGo);
  const leave = () =>
    void run(
      () => leaveEyeCheck(desk, surveyor),
      () => say(words.left),
    );
  return (
    <Section title={done === undefined ? (earlier > 0 ? words.beginAgain : words.invite) : words.stoppedTitle}>
      <p>{done === undefined ? words.beginWhat : words.stopped(done, patchesInCheck)}</p>
      {refused && <Notice kind="problem" title={refused} />}
      <div className="row by-hand">
        {done === undefined ? (
          <Button kind="main" size="big" disabled={busy} onClick={begin}>
            {words.begin}
          </Button>
        ) : (
          <>
            <Button kind="main" size="big" disabled={busy} onClick={onGo}>
              {words.goOn(done + 1, patchesInCheck)}
            </Button>
            <Button size="big" disabled={busy} onClick={begin}>
              {words.beginAnew}
            </Button>
            <Button size="big" kind="quiet" disabled={busy} onClick={leave}>
              {words.leave}
            </Button>
          </>
        )}
      </div>
    </Section>
  );
}
