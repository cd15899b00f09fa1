import { useState } from 'react';
import { useLocation } from 'wouter';
import { addPlanned, editPlanned, type Planned, plannedOfCollection, removePlanned } from '../../actions';
import type { BodyOf, SculptureRecord, Thing } from '../../engine/record';
import { campaignStepOf, campaignSteps } from '../../engine/trade';
import { date, w } from '../../words';
import { Field, Notice, Sheet, SheetActs } from '../parts';
import { Select } from '../parts/Select';
import { pathTo, say, useDeed, useDesk, useQuestion, useTyped } from '../shell';

const words = w.campaign.sheet;

interface CampaignSheetProps {
  readonly record: SculptureRecord;
  readonly planned: Planned;
  /** Undefined: a new one. */
  readonly campaign: Thing<'campaign'> | undefined;
  readonly onClose: () => void;
}

type Text = Record<
  | 'title'
  | 'opened'
  | 'step'
  | 'option'
  | 'decision'
  | 'fund'
  | 'began'
  | 'ended'
  | 'accepted'
  | 'warrantyUntil'
  | 'warrantyWho'
  | 'warrantyTerms'
  | 'givenUp'
  | 'note',
  string
>;

const empty: Text = {
  ...{ title: '', opened: '', step: campaignSteps[0]?.id ?? '', option: '', decision: '', fund: '' },
  ...{ began: '', ended: '', accepted: '', warrantyUntil: '', warrantyWho: '', warrantyTerms: '' },
  ...{ givenUp: '', note: '' },
};

const textOf = (body: BodyOf<'campaign'> | undefined, today: string, title: string): Text => {
  const start = { ...empty, opened: today, title };
  if (!body) return start;
  return Object.fromEntries(
    Object.keys(empty).map((key) => [key, String((body as Record<string, unknown>)[key] ?? '')]),
  ) as Text;
};

/** A new campaign, or the facts of one: what it follows, its days, its warranty. */
export function CampaignSheet({ record, planned, campaign, onClose }: CampaignSheetProps) {
  const desk = useDesk();
  const [, go] = useLocation();
  const common = useQuestion(plannedOfCollection(desk));
  const sculpture = record.sculpture.thing;
  const [text, setText] = useState(() => textOf(campaign?.body, desk.today(), record.sculpture.body.title));
  const [tried, setTried] = useState(false);
  const typed = useTyped(['campaign', campaign?.thing, record.sculpture.thing], { text: [text, setText] });
  const { run, refused, busy } = useDeed(typed);
  const set = (key: keyof Text) => (value: string) => setText({ ...text, [key]: value });
  const save = () => {
    setTried(true);
    if (!text.title.trim() || !text.opened) return;
    const said = Object.fromEntries(
      Object.entries(text).map(([key, value]) => [key, value.trim() === '' ? undefined : value.trim()]),
    ) as Partial<BodyOf<'campaign'>>;
    const body = { ...said, sculpture, title: text.title.trim(), opened: text.opened, step: text.step };
    const after = (to?: string) => {
      say(words.saved);
      onClose();
      if (to) go(to);
    };
    return campaign
      ? run(
          () => editPlanned(desk, 'campaign', campaign.thing, body),
          () => after(),
        )
      : run(
          () => addPlanned(desk, 'campaign', body),
          ({ thing }) => after(pathTo.campaign(thing)),
        );
  };
  const remove = (thing: string) =>
    run(
      () => removePlanned(desk, 'campaign', thing),
      () => {
        say(words.removed);
        onClose();
        go(pathTo.campaigns(sculpture));
      },
    );
  const field = (key: keyof Text, kind: 'text' | 'date' | 'long' = 'text', maxLength = 200) => (
    <Field
      label={words[key as 'began']}
      kind={kind}
      value={text[key]}
      onChange={set(key)}
      {...(kind === 'date' ? {} : { maxLength })}
      optional
    />
  );
  const choose = (key: 'option' | 'decision' | 'fund', things: readonly { thing: string; name: string }[]) => (
    <Select
      label={words[key]}
      value={text[key]}
      onChange={set(key)}
      options={[
        { value: '', label: words.noneOf },
        ...things.map(({ thing, name }) => ({ value: thing, label: name })),
      ]}
    />
  );
  return (
    <Sheet
      open
      title={campaign ? words.edit : words.add}
      onClose={onClose}
      actions={
        <SheetActs
          save={words.save}
          onSave={save}
          remove={campaign && { word: words.remove, go: () => void remove(campaign.thing) }}
          busy={busy}
        />
      }
    >
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      <Field
        label={words.name}
        hint={words.nameHint}
        value={text.title}
        onChange={set('title')}
        maxLength={200}
        error={tried && !text.title.trim() ? words.nameMissing : undefined}
      />
      <Field
        label={words.opened}
        kind="date"
        value={text.opened}
        onChange={set('opened')}
        short
        error={tried && !text.opened ? words.dayMissing : undefined}
      />
      <Select
        label={words.step}
        value={text.step}
        onChange={set('step')}
        options={campaignSteps.map(({ id, name }) => ({ value: id, label: name }))}
      />
      <p className="soft">{campaignStepOf(text.step)?.asks}</p>
      {choose(
        'option',
        planned.option.map(({ thing, body }) => ({ thing, name: body.title })),
      )}
      {choose(
        'decision',
        planned.decision.map(({ thing, body }) => ({ thing, name: `${body.title}, ${date(body.date)}` })),
      )}
      {choose(
        'fund',
        [...planned.fund, ...(common?.fund ?? [])].map(({ thing, body }) => ({ thing, name: body.title })),
      )}
      {campaign && (
        <>
          <div className="fields">
            {field('began', 'date')}
            {field('ended', 'date')}
            {field('accepted', 'date')}
            {field('warrantyUntil', 'date')}
          </div>
          {field('warrantyWho')}
          {field('warrantyTerms', 'long', 2000)}
          {field('givenUp', 'long', 1000)}
        </>
      )}
      {field('note', 'long', 4000)}
    </Sheet>
  );
}
