import { useState } from 'react';
import { takeOverReport } from '../../actions';
import { statementsIn, type WorkHere } from '../../engine/bring';
import { w } from '../../words';
import { Button, Field, FormActs, Notice } from '../parts';
import { Select } from '../parts/Select';
import { say, useDeed, useDesk, useTyped } from '../shell';
import { ThoughtsSoFar } from './ThoughtsSoFar';
import { WorkSelect } from './WorkSelect';

const words = w.bring;
const asked = ['by', 'date', 'source'] as const;
const longest = { by: 200, date: 60, source: 300 } as const;
const labels = { by: words.author, date: words.reportDate, source: words.reportSource } as const;
const longestText = 100_000;

/** A report by others, typed or pasted line by line: what was thought, of whom and when. */
export function BringReport({ works }: { readonly works: readonly WorkHere[] }) {
  const desk = useDesk();
  const [thing, setThing] = useState(works.length === 1 ? (works[0]?.thing ?? '') : '');
  const [report, setReport] = useState({ by: '', date: '', source: '' });
  const [text, setText] = useState('');
  const [about, setAbout] = useState<Readonly<Record<string, string>>>({});
  const [tried, setTried] = useState(false);
  const typed = useTyped(['report of others', undefined], {
    thing: [thing, setThing],
    report: [report, setReport],
    text: [text, setText],
    about: [about, setAbout],
  });
  const { run, refused, busy } = useDeed(typed);
  const work = works.find((each) => each.thing === thing);
  const statements = statementsIn(text);
  const zones = work?.zones.map(({ thing: value, letter, name }) => ({ value, label: `${letter} ${name}` })) ?? [];
  const take = () => {
    setTried(true);
    if (!work || statements.length === 0 || asked.some((key) => report[key].trim() === '')) return;
    const said = statements.map((statement) => ({ statement, about: about[statement] || undefined }));
    return run(
      () => takeOverReport(desk, work.thing, report, said),
      ({ taken, here }) => {
        setText('');
        setAbout({});
        setTried(false);
        say(words.takenReport(taken, here));
      },
    );
  };
  const choose = (to: string) => {
    setAbout({});
    setThing(to);
  };
  return (
    <div className="stack">
      <p className="soft">{words.reportWhat}</p>
      <WorkSelect works={works} label={words.work} value={thing} onChange={choose} />
      {work && (
        <>
          {asked.map((key) => (
            <Field
              key={key}
              label={labels[key]}
              hint={key === 'date' ? words.reportDateHint : undefined}
              value={report[key]}
              onChange={(value) => setReport({ ...report, [key]: value })}
              maxLength={longest[key]}
              error={tried && report[key].trim() === '' ? words.missing[key] : undefined}
            />
          ))}
          <Field
            label={words.statements}
            hint={words.statementsHint}
            kind="long"
            value={text}
            onChange={setText}
            maxLength={longestText}
            error={tried && statements.length === 0 ? words.noStatement : undefined}
          />
          {statements.length > 0 && (
            <ol className="bare bring-rows">
              {statements.map((statement, i) => (
                <li key={statement}>
                  <p className="bring-cell">{statement}</p>
                  {zones.length > 0 && (
                    <Select
                      label={words.about(i + 1)}
                      value={about[statement] ?? ''}
                      onChange={(zone) => setAbout({ ...about, [statement]: zone })}
                      options={[{ value: '', label: words.wholeWork }, ...zones]}
                    />
                  )}
                </li>
              ))}
            </ol>
          )}
          {typed.line}
          {refused && <Notice kind="problem" title={refused} />}
          <FormActs>
            <Button kind="main" size="round" disabled={busy} onClick={() => void take()}>
              {words.takeReport(statements.length)}
            </Button>
          </FormActs>
          <ThoughtsSoFar work={work} />
        </>
      )}
    </div>
  );
}
