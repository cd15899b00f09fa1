import { useState } from 'react';
import { askPersistence, checkReady, type ReadyLine, readyAbout, settings } from '../../actions';
import { w } from '../../words';
import { Button, LinkButton, Page, Section } from '../parts';
import { pathTo, say, useDesk, useQuestion } from '../shell';
import { Line } from './Line';
import './ready.css';

const words = w.ready;

/** One touch looks at what a day in the field rests on, and says of each what to do. */
export function ReadyScreen() {
  const desk = useDesk();
  const [lines, setLines] = useState<readonly ReadyLine[]>([]);
  const [trial, setTrial] = useState<string>();
  const [state, setState] = useState<'before' | 'looking' | 'looked'>('before');
  const check = async () => {
    setState('looking');
    setLines([]);
    await checkReady(desk, {
      line: (line) => {
        setTrial(undefined);
        setLines((before) => [...before, line]);
      },
      trial: (kept, of) => setTrial(words.trial(kept, of)),
    });
    setState('looked');
  };
  const promise = async () => {
    const answer = await askPersistence(desk);
    say(answer === 'yes' ? words.asked.yes : words.asked.no);
    await check();
  };
  const of = (state: ReadyLine['state']) => lines.filter((line) => line.state === state).length;
  return (
    <Page
      title={words.title}
      lead={words.lead}
      back={{ to: pathTo.sculptures(), label: words.back }}
      narrow
      actions={
        <Button kind="main" size="big" onClick={check} disabled={state === 'looking'}>
          {state === 'looked' ? words.again : words.do}
        </Button>
      }
    >
      {state === 'before' && <p>{words.what}</p>}
      <p className="ready-result" role="status">
        {state === 'looking' && (trial ?? words.underWay(lines.length, readyAbout.length))}
        {state === 'looked' && words.result(of('ok'), of('look'), of('unknown'))}
      </p>
      {lines.length > 0 && (
        <ul className="bare ready-lines" aria-label={words.list}>
          {(state === 'looked' ? inNeed(lines) : lines).map((line) => (
            <Line key={line.about} line={line} onPromise={promise} />
          ))}
        </ul>
      )}
      <Held />
    </Page>
  );
}

const need = ['look', 'unknown', 'ok'] as const;

/** What wants a hand first; in itself in the order it was looked at. */
const inNeed = (lines: readonly ReadyLine[]): readonly ReadyLine[] =>
  need.flatMap((state) => lines.filter((line) => line.state === state));

/** How this device is set for the hand, the light and the weather, told and a touch away. */
function Held() {
  const { theme, hand, gloves, wetGlass } = useQuestion(settings);
  return (
    <Section title={words.hold}>
      <p>{words.holdWhat(w.settings.themes[theme], words.holdHand[hand], gloves, wetGlass)}.</p>
      <p className="soft">{words.cold}</p>
      <div className="row">
        <LinkButton to={pathTo.settings()}>{words.holdTo}</LinkButton>
      </div>
    </Section>
  );
}
