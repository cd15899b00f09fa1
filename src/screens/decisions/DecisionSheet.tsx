import { useState } from 'react';
import {
  addPlanned,
  editPlanned,
  insightsOf,
  interpretationsOf,
  type Planned,
  removePlanned,
  replaceDecision,
  type SculptureRow,
} from '../../actions';
import { endOf, type Thing } from '../../engine/record';
import { w, workName, zoneOptions } from '../../words';
import { Choices, Field, Notice, Sheet, SheetActs } from '../parts';
import { PeopleEntry } from '../parts/PeopleEntry';
import { Select } from '../parts/Select';
import { SignedEntry } from '../parts/SignedEntry';
import { say, useDeed, useDesk, useQuestion, useTyped } from '../shell';
import { type DecisionText, decisionBody, decisionText, newDecision } from './decisionDraft';
import { evidenceOf } from './evidenceOf';
import { RefusedEntry } from './RefusedEntry';
import { WiresEntry } from './WiresEntry';

const words = w.decisions.form;

/** What the sheet is opened for: a new one, one to be mended, or one in the place of another. */
export type DecisionAsked =
  | { readonly how: 'new'; readonly work: string }
  | { readonly how: 'edit' | 'anew'; readonly decision: Thing<'decision'> };

interface DecisionSheetProps {
  readonly asked: DecisionAsked;
  readonly works: readonly SculptureRow[];
  readonly planned: Planned;
  readonly onClose: () => void;
}

const startOf = (asked: DecisionAsked, today: string): DecisionText => {
  if (asked.how === 'new') return newDecision(asked.work, today);
  const before = decisionText(asked.decision.body);
  if (asked.how === 'edit') return before;
  // Its tripwires are taken along, what it rested on then is not.
  return { ...newDecision(before.work, today), title: before.title, wires: before.wires };
};

export function DecisionSheet({ asked, works, planned, onClose }: DecisionSheetProps) {
  const desk = useDesk();
  const [text, setText] = useState(() => startOf(asked, desk.today()));
  const [tried, setTried] = useState(false);
  const typed = useTyped(
    [
      'decision',
      asked.how === 'edit' ? asked.decision.thing : undefined,
      asked.how === 'new' ? asked.work : asked.decision.thing,
    ],
    { text: [text, setText] },
  );
  const { run, refused, busy } = useDeed(typed);
  const set =
    <K extends keyof DecisionText>(key: K) =>
    (value: DecisionText[K]) =>
      setText((before) => ({ ...before, [key]: value }));
  const options = planned.option.filter(({ body }) => body.sculpture === text.work);
  const done = (said: string) => () => {
    say(said);
    onClose();
  };
  const save = () => {
    setTried(true);
    const body = decisionBody(text);
    if (!body) return;
    if (asked.how === 'new') return run(() => addPlanned(desk, 'decision', body), done(words.saved));
    const { thing } = asked.decision;
    if (asked.how === 'edit') return run(() => editPlanned(desk, 'decision', thing, body), done(words.edited));
    return run(() => replaceDecision(desk, thing, body), done(words.saved));
  };
  const missing = (value: string, sentence: string) => (tried && value.trim() === '' ? sentence : undefined);
  return (
    <Sheet
      open
      title={asked.how === 'new' ? words.add : words[asked.how]}
      onClose={onClose}
      actions={
        <>
          {tried && !decisionBody(text) && <p className="field-error">{words.missing}</p>}
          <SheetActs
            save={words.save}
            onSave={save}
            remove={
              asked.how === 'edit'
                ? {
                    word: words.remove,
                    go: () =>
                      void run(() => removePlanned(desk, 'decision', asked.decision.thing), done(words.removed)),
                  }
                : undefined
            }
            busy={busy}
          />
        </>
      }
    >
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      {asked.how === 'anew' && <p>{words.anewWhat(asked.decision.body.title)}</p>}
      {asked.how === 'new' && works.length > 0 && (
        <Select
          label={words.work}
          value={text.work}
          onChange={(work) => setText({ ...text, work, option: '', picked: [], wires: [] })}
          options={[
            { value: '', label: w.decisions.allWorks },
            ...works.map(({ thing, body }) => ({ value: thing, label: workName({ body }) })),
          ]}
        />
      )}
      <Field
        label={words.title}
        hint={words.titleHint}
        value={text.title}
        onChange={set('title')}
        maxLength={300}
        error={missing(text.title, words.titleMissing)}
      />
      <Field
        label={words.day}
        kind="date"
        value={text.day}
        onChange={set('day')}
        short
        error={missing(text.day, words.dayMissing)}
      />
      {options.length > 0 && (
        <Select
          label={words.option}
          value={text.option}
          onChange={set('option')}
          options={[
            { value: '', label: words.optionNone },
            ...options.map(({ thing, body }) => ({ value: thing, label: body.title })),
          ]}
        />
      )}
      <Field
        label={words.chosen}
        kind="long"
        value={text.chosen}
        onChange={set('chosen')}
        maxLength={2000}
        error={missing(text.chosen, words.chosenMissing)}
      />
      <RefusedEntry
        rows={text.refused}
        rest={text.option ? options.filter(({ thing }) => thing !== text.option) : []}
        tried={tried}
        onChange={set('refused')}
      />
      {text.work ? (
        <FromRecord key={text.work} text={text} tried={tried} onChange={setText} />
      ) : (
        <WiresEntry wires={text.wires} zones={[]} tried={tried} newId={desk.newId} onChange={set('wires')} />
      )}
      <Field
        label={words.evidenceOwn}
        hint={words.evidenceOwnHint}
        kind="long"
        value={text.own}
        onChange={set('own')}
        maxLength={8000}
        optional
      />
      <PeopleEntry label={words.consulted} people={text.consulted} onChange={set('consulted')} tried={tried} />
      <Field
        label={words.dissent}
        kind="long"
        value={text.dissent}
        onChange={set('dissent')}
        maxLength={2000}
        optional
      />
      <Field label={words.review} kind="date" value={text.review} onChange={set('review')} short optional />
      <SignedEntry
        label={words.signed}
        signed={text.signed}
        onChange={set('signed')}
        today={desk.today()}
        tried={tried}
      />
      <Field label={words.note} kind="long" value={text.note} onChange={set('note')} maxLength={4000} optional />
    </Sheet>
  );
}

interface FromRecordProps {
  readonly text: DecisionText;
  readonly tried: boolean;
  readonly onChange: (change: (before: DecisionText) => DecisionText) => void;
}

/** What only one work has: its zones to watch, and what its record says today. */
function FromRecord({ text, tried, onChange }: FromRecordProps) {
  const desk = useDesk();
  const insights = useQuestion(insightsOf(desk, text.work));
  const thoughts = useQuestion(interpretationsOf(desk, text.work));
  const zones = zoneOptions((insights?.record.zones ?? []).filter((zone) => endOf(zone) === undefined));
  const names = new Map(zones.map(({ value, label }) => [value, label]));
  const sentences = insights
    ? evidenceOf(insights, thoughts ?? [], (zone) => names.get(zone) ?? w.decisions.zoneGone)
    : [];
  return (
    <>
      {sentences.length > 0 ? (
        <Choices
          label={words.evidence}
          hint={words.evidenceHint}
          tiles="full"
          options={sentences.map((sentence) => ({ value: sentence, label: sentence }))}
          values={text.picked}
          onChange={(picked) => onChange((before) => ({ ...before, picked }))}
        />
      ) : (
        <p className="soft">{insights === undefined ? w.decisions.workingOut : words.evidenceNone}</p>
      )}
      {insights !== undefined && (
        <WiresEntry
          wires={text.wires}
          zones={zones}
          tried={tried}
          newId={desk.newId}
          onChange={(wires) => onChange((before) => ({ ...before, wires }))}
        />
      )}
    </>
  );
}
