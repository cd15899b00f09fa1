import type { ReactNode } from 'react';
import {
  addPlanned,
  editPlanned,
  type Outcome,
  type PlannedBody,
  type PlannedKind,
  removePlanned,
} from '../../actions';
import { Notice, Sheet, SheetActs } from '../parts';
import { useDesk } from './DeskContext';
import { say } from './say';
import { useDeed } from './useDeed';
import type { TypedHere } from './useTyped';

/** The names a kind writes down, without those it leaves room for. */
type FieldOf<T> = keyof { [F in keyof T as string extends F ? never : F]: T[F] };

interface PlannedSheetProps<K extends PlannedKind> {
  readonly kind: K;
  /** What is changed; undefined: a new one. */
  readonly thing: string | undefined;
  readonly title: string;
  readonly words: {
    readonly save: string;
    readonly saved: string;
    readonly remove?: string | undefined;
    readonly removed?: string;
  };
  /** What is to be kept, as the form has it; undefined while something in it is missing or wrong, which the form then says. */
  readonly body: () => PlannedBody<K> | undefined;
  /** Said of a new one only: what it belongs to, and what is said elsewhere since. */
  readonly fixed?: readonly FieldOf<PlannedBody<K>>[];
  /** What is typed into it, held until it is kept. */
  readonly typed: TypedHere;
  /** Done first, where something else must be there before: what it refuses is said, and leaves it at that. */
  readonly before?: (() => Promise<Outcome>) | undefined;
  readonly onClose: () => void;
  /** After it is closed. */
  readonly onRemoved?: (() => void) | undefined;
  readonly children: ReactNode;
}

/** A sheet over one thing planned: kept or kept anew, taken away where it is there, and what was refused said at its head. */
export function PlannedSheet<K extends PlannedKind>(props: PlannedSheetProps<K>) {
  const { kind, thing, title, words, body, fixed = [], typed, before, onClose, onRemoved, children } = props;
  const desk = useDesk();
  const { run, refused, busy } = useDeed(typed);
  const done = (said: string) => {
    say(said);
    onClose();
  };
  const save = () => {
    const whole = body();
    if (!whole) return;
    void run(
      async () => {
        const ready = await before?.();
        if (ready && !ready.ok) return ready;
        return thing ? editPlanned(desk, kind, thing, without(whole, fixed)) : addPlanned(desk, kind, whole);
      },
      () => done(words.saved),
    );
  };
  const { remove, removed = '' } = words;
  const takeAway = (gone: string) =>
    void run(
      () => removePlanned(desk, kind, gone),
      () => {
        done(removed);
        onRemoved?.();
      },
    );
  return (
    <Sheet
      open
      title={title}
      onClose={onClose}
      actions={
        <SheetActs
          save={words.save}
          onSave={save}
          remove={thing && remove ? { word: remove, go: () => takeAway(thing) } : undefined}
          busy={busy}
        />
      }
    >
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      {children}
    </Sheet>
  );
}

const without = <T extends object>(body: T, names: readonly PropertyKey[]): Partial<T> =>
  Object.fromEntries(Object.entries(body).filter(([name]) => !names.includes(name))) as Partial<T>;
