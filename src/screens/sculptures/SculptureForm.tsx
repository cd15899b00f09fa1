import { type ReactNode, useState } from 'react';
import type { BodyOf } from '../../engine/record';
import { w } from '../../words';
import { Button, Field, FormActs, Notice } from '../parts';
import { useTyped } from '../shell';

const words = w.sculptures.form;

/** What the form holds, all as text; '' where not said. */
export interface SculptureText {
  readonly number: string;
  readonly title: string;
  readonly maker: string;
  readonly date: string;
  readonly materials: string;
  readonly dimensions: string;
  readonly place: string;
  readonly access: string;
  readonly note: string;
}

export const emptyText: SculptureText = {
  number: '',
  title: '',
  maker: '',
  date: '',
  materials: '',
  dimensions: '',
  place: '',
  access: '',
  note: '',
};

/** The body of the sculpture itself; fields left empty are left out. */
export const bodyFrom = (text: SculptureText): BodyOf<'sculpture'> => {
  const said = (key: 'maker' | 'date' | 'materials' | 'dimensions' | 'note') => text[key].trim() || undefined;
  const optional = {
    maker: said('maker'),
    date: said('date'),
    materials: said('materials'),
    dimensions: said('dimensions'),
  };
  return { number: text.number.trim(), title: text.title.trim(), ...optional, note: said('note') };
};

interface SculptureFormProps {
  /** Of which work; undefined: a new one. */
  readonly work: string | undefined;
  readonly start: SculptureText;
  readonly doIt: string;
  readonly refused: string | undefined;
  readonly busy: boolean;
  readonly onDone: (text: SculptureText, kept: () => void) => void;
  readonly more?: ReactNode;
}

/** Number, title and all that is known of a work. Only the title is asked for. */
export function SculptureForm({ work, start, doIt, refused, busy, onDone, more }: SculptureFormProps) {
  const [text, setText] = useState(start);
  const [tried, setTried] = useState(false);
  const typed = useTyped(['work', work], { text: [text, setText] });
  const field = (key: keyof SculptureText) => ({
    label: words[key],
    value: text[key],
    onChange: (value: string) => setText({ ...text, [key]: value }),
  });
  const done = () => {
    setTried(true);
    if (text.title.trim()) onDone(text, typed.kept);
  };
  return (
    <form
      className="stack roomy"
      noValidate
      onSubmit={(e) => {
        e.preventDefault();
        done();
      }}
    >
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      <div className="stack">
        <div className="fields">
          <Field
            {...field('title')}
            maxLength={300}
            error={tried && !text.title.trim() ? words.titleMissing : undefined}
          />
          <Field {...field('number')} hint={words.numberHint} maxLength={60} optional />
          <Field {...field('maker')} maxLength={300} optional />
          <Field {...field('date')} hint={words.dateHint} maxLength={60} optional />
          <Field {...field('materials')} maxLength={500} optional />
          <Field {...field('dimensions')} maxLength={300} optional />
        </div>
        <Field {...field('place')} hint={words.placeHint} maxLength={1000} optional />
        <Field {...field('access')} hint={words.accessHint} kind="long" maxLength={2000} optional />
        <Field {...field('note')} kind="long" maxLength={4000} optional />
      </div>
      <FormActs>
        {more}
        <Button type="submit" kind="main" size="round" disabled={busy}>
          {doIt}
        </Button>
      </FormActs>
    </form>
  );
}
