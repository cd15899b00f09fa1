import type { ReactNode } from 'react';
import { addPlanned, editPlanned, type PlannedBody, type PlannedKind, removePlanned } from '../../actions';
import { Notice, Sheet, SheetActs } from '../parts';
import { useDesk } from './DeskContext';
import { say } from './say';
import { useDeed } from './useDeed';

interface PlannedSheetProps<K extends PlannedKind> {
  readonly kind: K;
  /** What is changed; undefined: a new one. */
  readonly thing: string | undefined;
  readonly title: string;
  readonly words: {
    readonly save: string;
    readonly saved: string;
    readonly remove?: string;
    readonly removed?: string;
  };
  /** What is to be kept, as the form has it; undefined while something in it is missing or wrong, which the form then says. */
  readonly body: () => PlannedBody<K> | undefined;
  /** Done first, where something else must be there before: false leaves it at that. */
  readonly before?: () => Promise<boolean>;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** A sheet over one thing planned: kept or kept anew, taken away where it is there, and what was refused said at its head. */
export function PlannedSheet<K extends PlannedKind>(props: PlannedSheetProps<K>) {
  const { kind, thing, title, words, body, before, onClose, children } = props;
  const desk = useDesk();
  const { run, refused, busy } = useDeed();
  const done = (said: string) => () => {
    say(said);
    onClose();
  };
  const save = async () => {
    const whole = body();
    if (!whole || (before && !(await before()))) return;
    await run(() => (thing ? editPlanned(desk, kind, thing, whole) : addPlanned(desk, kind, whole)), done(words.saved));
  };
  const { remove, removed = '' } = words;
  return (
    <Sheet
      open
      title={title}
      onClose={onClose}
      actions={
        <SheetActs
          save={words.save}
          onSave={() => void save()}
          remove={
            thing && remove
              ? { word: remove, go: () => void run(() => removePlanned(desk, kind, thing), done(removed)) }
              : undefined
          }
          busy={busy}
        />
      }
    >
      {refused && <Notice kind="problem" title={refused} />}
      {children}
    </Sheet>
  );
}
