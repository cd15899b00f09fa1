import { useEffect, useState } from 'react';
import { setSurveyor, settings, surveyors, tabs, touchedNow, wasAway } from '../../actions';
import { w } from '../../words';
import { Button, Sheet } from '../parts';
import { useDesk } from './DeskContext';
import { say } from './say';
import { useQuestion } from './useQuestion';

const words = w.field.who;

/**
 * A tablet that lay untouched for half an hour may be in other hands: who is at work is asked, and the touch that woke it does nothing.
 * Not before it is touched or looked at again: what it shows meanwhile, such as a watch, stays in sight.
 */
export function AskWho() {
  const desk = useDesk();
  const people = useQuestion(surveyors(desk)) ?? [];
  const { mode } = useQuestion(tabs(desk));
  const [away, setAway] = useState(false);
  // One person needs no asking, and a tab that only reads marks nothing.
  const asks = people.length > 1 && mode === 'writing';
  useEffect(() => {
    const look = () => {
      if (document.visibilityState === 'visible' && wasAway()) setAway(true);
    };
    const touched = (e: Event) => {
      if (asks && wasAway()) {
        e.preventDefault();
        e.stopImmediatePropagation();
        setAway(true);
      } else touchedNow();
    };
    look();
    document.addEventListener('visibilitychange', look);
    for (const event of touches) document.addEventListener(event, touched, true);
    return () => {
      document.removeEventListener('visibilitychange', look);
      for (const event of touches) document.removeEventListener(event, touched, true);
    };
  }, [asks]);
  if (!away || !asks) return null;
  return <Asking people={people} onAnswer={() => setAway(false)} />;
}

/** The click too: on some tablets it comes without the others, as from a switch or a screen reader. */
const touches = ['pointerdown', 'keydown', 'click'] as const;

interface AskingProps {
  readonly people: readonly { readonly thing: string; readonly role: string; readonly name?: string | undefined }[];
  readonly onAnswer: () => void;
}

function Asking({ people, onAnswer }: AskingProps) {
  const { surveyor } = useQuestion(settings);
  // The question itself is answered by touches.
  useEffect(() => touchedNow(), []);
  const present = people.find(({ thing }) => thing === surveyor);
  const choose = (thing: string, role: string) => {
    setSurveyor(thing);
    say(words.set(role));
    onAnswer();
  };
  return (
    <Sheet open title={words.title} onClose={onAnswer}>
      <p>{words.what}</p>
      {present && (
        <Button kind="main" size="big" wide onClick={() => choose(present.thing, present.role)}>
          {words.still(present.role)}
        </Button>
      )}
      {people
        .filter(({ thing }) => thing !== surveyor)
        .map(({ thing, role, name }) => (
          <Button key={thing} size="round" wide onClick={() => choose(thing, role)}>
            {name ? `${role}, ${name}` : role}
          </Button>
        ))}
    </Sheet>
  );
}
