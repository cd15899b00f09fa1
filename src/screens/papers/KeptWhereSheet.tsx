import { useState } from 'react';
import type { BodyOf, Thing } from '../../engine/record';
import { keptThings } from '../../engine/trade';
import { w } from '../../words';
import { Field } from '../parts';
import { Select } from '../parts/Select';
import { useTyped } from '../shell';
import { PlannedSheet } from '../shell/PlannedSheet';

const words = w.paperKept;

interface KeptWhereSheetProps {
  /** Undefined: a new one. */
  readonly one: Thing<'keptWhere'> | undefined;
  readonly works: readonly { readonly value: string; readonly label: string }[];
  readonly onClose: () => void;
}

/** One thing that is kept somewhere. */
export function KeptWhereSheet({ one, works, onClose }: KeptWhereSheetProps) {
  const from = one?.body;
  const [sort, setSort] = useState(from?.sort ?? keptThings[0]?.id ?? 'other');
  const [work, setWork] = useState(from?.sculpture ?? '');
  const [found, setFound] = useState(from?.found ?? '');
  const [text, setText] = useState({
    what: from?.what ?? '',
    where: from?.where ?? '',
    who: from?.who ?? '',
    note: from?.note ?? '',
  });
  const [tried, setTried] = useState(false);
  const typed = useTyped(['kept where', one?.thing], {
    sort: [sort, setSort],
    work: [work, setWork],
    found: [found, setFound],
    text: [text, setText],
  });
  const set = (key: keyof typeof text) => (value: string) => setText({ ...text, [key]: value });
  const body = (): BodyOf<'keptWhere'> | undefined => {
    setTried(true);
    if (!text.where.trim()) return undefined;
    return {
      sculpture: work || undefined,
      sort,
      what: text.what.trim() || undefined,
      where: text.where.trim(),
      who: text.who.trim() || undefined,
      found: found || undefined,
      note: text.note.trim() || undefined,
    };
  };
  return (
    <PlannedSheet
      kind="keptWhere"
      thing={one?.thing}
      title={one ? words.edit : words.add}
      words={words}
      body={body}
      fixed={['sculpture']}
      typed={typed}
      onClose={onClose}
    >
      <Select
        label={words.sort}
        value={sort}
        onChange={setSort}
        options={keptThings.map(({ id, name }) => ({ value: id, label: name }))}
      />
      <Field
        label={words.what}
        hint={words.whatHint}
        value={text.what}
        onChange={set('what')}
        maxLength={300}
        optional
      />
      <Field
        label={words.where}
        hint={words.whereHint}
        kind="long"
        value={text.where}
        onChange={set('where')}
        maxLength={1000}
        error={tried && !text.where.trim() ? words.whereMissing : undefined}
      />
      <Field label={words.who} value={text.who} onChange={set('who')} maxLength={300} optional />
      <Field label={words.found} kind="date" value={found} onChange={setFound} short optional />
      {!one && works.length > 0 && (
        <Select
          label={words.work}
          value={work}
          onChange={setWork}
          options={[{ value: '', label: words.ofAll }, ...works]}
        />
      )}
      <Field label={words.note} kind="long" value={text.note} onChange={set('note')} maxLength={4000} optional />
    </PlannedSheet>
  );
}
