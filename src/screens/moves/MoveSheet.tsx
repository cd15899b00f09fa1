import { useState } from 'react';
import type { WorkAround } from '../../actions';
import type { BodyOf, Thing } from '../../engine/record';
import { w, workName } from '../../words';
import { Choice, Field, Notice, PhotosHere } from '../parts';
import { Select } from '../parts/Select';
import { useDesk, useTyped } from '../shell';
import { PlannedSheet } from '../shell/PlannedSheet';

const words = w.moves;
const sorts = ['move', 'loan out', 'loan in'] as const;
const none = '';

interface MoveSheetProps {
  readonly works: readonly WorkAround[];
  /** Undefined: a new one. */
  readonly move: Thing<'move'> | undefined;
  readonly onClose: () => void;
}

/** One move: which work, where from and to, when, and how it was held. */
export function MoveSheet({ works, move, onClose }: MoveSheetProps) {
  const desk = useDesk();
  const from = move?.body;
  const [work, setWork] = useState(from?.sculpture ?? none);
  const [sort, setSort] = useState<BodyOf<'move'>['sort']>(from?.sort ?? 'move');
  const [left, setLeft] = useState(from?.left ?? desk.today());
  const [backDue, setBackDue] = useState(from?.backDue ?? '');
  const [back, setBack] = useState(from?.back ?? '');
  const [photos, setPhotos] = useState<readonly string[]>(from?.photos ?? []);
  const [text, setText] = useState({
    from: from?.from ?? '',
    to: from?.to ?? '',
    who: from?.who ?? '',
    how: from?.how ?? '',
    insurance: from?.insurance ?? '',
    note: from?.note ?? '',
  });
  const [tried, setTried] = useState(false);
  const typed = useTyped(['move', move?.thing], {
    work: [work, setWork],
    sort: [sort, setSort],
    left: [left, setLeft],
    backDue: [backDue, setBackDue],
    back: [back, setBack],
    photos: [photos, setPhotos],
    text: [text, setText],
  });
  const set = (key: keyof typeof text) => (value: string) => setText({ ...text, [key]: value });
  const choose = (thing: string) => {
    setWork(thing);
    const place = works.find(({ sculpture }) => sculpture.thing === thing)?.place;
    // Where it stands is known; longer places are cut to what the field holds.
    if (place && text.from === '') setText({ ...text, from: place.slice(0, 300) });
  };
  const body = (): BodyOf<'move'> | undefined => {
    setTried(true);
    if (!work || !text.to.trim() || !left) return undefined;
    return {
      sculpture: work,
      sort,
      from: text.from.trim(),
      to: text.to.trim(),
      left,
      backDue: backDue || undefined,
      back: back || undefined,
      who: text.who.trim() || undefined,
      how: text.how.trim() || undefined,
      insurance: text.insurance.trim() || undefined,
      photos: photos.length > 0 ? [...photos] : undefined,
      note: text.note.trim() || undefined,
    };
  };
  return (
    <PlannedSheet
      kind="move"
      thing={move?.thing}
      title={move ? words.edit : words.add}
      words={words}
      body={body}
      typed={typed}
      onClose={onClose}
    >
      {tried && !work && <Notice kind="problem" title={words.workMissing} />}
      {!move && (
        <Select
          label={words.work}
          value={work}
          onChange={choose}
          options={[
            { value: none, label: '–' },
            ...works.map(({ sculpture }) => ({
              value: sculpture.thing,
              label: workName(sculpture),
            })),
          ]}
        />
      )}
      <Choice
        label={words.sort}
        options={sorts.map((value) => ({ value, label: words.sorts[value], detail: words.sortsWhat[value] }))}
        value={sort}
        onChange={setSort}
      />
      <Field label={words.from} value={text.from} onChange={set('from')} maxLength={300} optional />
      <Field
        label={words.to}
        value={text.to}
        onChange={set('to')}
        maxLength={300}
        error={tried && !text.to.trim() ? words.toMissing : undefined}
      />
      <Field
        label={sort === 'loan in' ? words.leftIn : words.left}
        kind="date"
        value={left}
        onChange={setLeft}
        error={tried && !left ? words.dayMissing : undefined}
        short
      />
      <Field label={words.backDue} kind="date" value={backDue} onChange={setBackDue} short optional />
      <Field label={words.back} kind="date" value={back} onChange={setBack} short optional />
      <Field label={words.who} value={text.who} onChange={set('who')} maxLength={300} optional />
      <Field label={words.how} kind="long" value={text.how} onChange={set('how')} maxLength={2000} optional />
      <Field label={words.insurance} value={text.insurance} onChange={set('insurance')} maxLength={500} optional />
      {work && (
        <PhotosHere desk={desk} sculpture={work} as="other" label={words.photos} photos={photos} onChange={setPhotos} />
      )}
      <Field label={words.note} kind="long" value={text.note} onChange={set('note')} maxLength={4000} optional />
    </PlannedSheet>
  );
}
