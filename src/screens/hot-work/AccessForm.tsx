import { useState } from 'react';
import { setPlanned } from '../../actions';
import { isMoney, readMoney } from '../../engine/money';
import { type BodyOf, nameOf } from '../../engine/record';
import { reaches } from '../../engine/trade';
import { fieldText, moneyTyped, numberTyped, sayReason, w } from '../../words';
import { Choice, Field, Notice, Sheet, SheetActs } from '../parts';
import { MoneyField } from '../parts/MoneyField';
import { say, useDeed, useDesk, useTyped } from '../shell';
import { useMoney } from '../shell/useMoney';
import { maybeMeasure, maybeNumber } from './typed';

const words = w.accessSheet;
const bearsOptions = ['yes', 'no', 'not known'] as const;
const figures = ['height', 'plinth', 'outreach', 'waterDepth', 'days'] as const;
const texts = ['ground', 'closures', 'power', 'water', 'permits', 'rescue', 'note'] as const;

/** All but the days are lengths. */
const figureOf = (key: (typeof figures)[number], text: string) =>
  key === 'days' ? maybeNumber(text) : maybeMeasure('length', text);

interface AccessFormProps {
  readonly sculpture: string;
  readonly sheet: BodyOf<'accessSheet'> | undefined;
  readonly onClose: () => void;
}

export function AccessForm({ sculpture, sheet, onClose }: AccessFormProps) {
  const desk = useDesk();
  const { currency, onCurrency, keepCurrency } = useMoney();
  const [text, setText] = useState(() => textOf(sheet));
  const [tried, setTried] = useState(false);
  const typed = useTyped(['access sheet', sheet && sculpture, sculpture], { text: [text, setText] });
  const { run, refused, busy } = useDeed(typed);
  const set =
    <K extends keyof typeof text>(key: K) =>
    (value: (typeof text)[K]) =>
      setText({ ...text, [key]: value });
  const wrong = (key: (typeof figures)[number]): boolean => {
    const figure = figureOf(key, text[key]);
    return figure === 'wrong' || (figure !== undefined && (figure < 0 || (key === 'height' && figure === 0)));
  };
  const costIn = sheet?.dayCost?.currency ?? currency;
  const cost = text.dayCost.trim() ? readMoney(text.dayCost, costIn) : undefined;
  const costWrong = cost && !isMoney(cost) ? sayReason(cost) : undefined;
  const save = async () => {
    setTried(true);
    if (figures.some(wrong) || costWrong) return;
    const dayCost = cost && isMoney(cost) ? { ...cost } : undefined;
    const role = text.competent.trim();
    const name = text.competentName.trim();
    const body: BodyOf<'accessSheet'> = {
      sculpture,
      ...Object.fromEntries(figures.map((key) => [key, figureOf(key, text[key])])),
      ...Object.fromEntries(texts.map((key) => [key, text[key].trim() || undefined])),
      ...{ equipment: text.equipment || undefined, bears: text.bears, dayCost },
      competent: role || name ? { role: role || name, ...(role && name ? { name } : {}) } : undefined,
    };
    await run(
      async () => {
        const ready = dayCost ? await keepCurrency() : undefined;
        if (ready && !ready.ok) return ready;
        return setPlanned(desk, 'accessSheet', nameOf.accessSheet(sculpture), body);
      },
      () => {
        say(words.saved);
        onClose();
      },
    );
  };
  const figure = (key: (typeof figures)[number]) => (
    <Field
      label={words[key]}
      takes={key === 'days' ? 'number' : 'length'}
      value={text[key]}
      onChange={set(key)}
      error={tried && wrong(key) ? words.figureWrong : undefined}
      optional
      short
    />
  );
  const line = (key: (typeof texts)[number], most: number, hint?: string) => (
    <Field label={words[key]} kind="long" hint={hint} value={text[key]} onChange={set(key)} maxLength={most} optional />
  );
  return (
    <Sheet
      open
      title={words.title}
      onClose={onClose}
      actions={<SheetActs save={words.save} onSave={() => void save()} busy={busy} />}
    >
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      {figure('height')}
      {figure('plinth')}
      <Choice
        label={words.equipment}
        options={reaches.map(({ id, name }) => ({ value: id, label: name }))}
        value={text.equipment || undefined}
        onChange={set('equipment')}
      />
      {figure('outreach')}
      {line('ground', 500, words.groundHint)}
      <Choice
        label={words.bears}
        tiles="narrow"
        options={bearsOptions.map((value) => ({ value, label: words.bearsWords[value] }))}
        value={text.bears}
        onChange={set('bears')}
      />
      {figure('waterDepth')}
      {line('closures', 1000)}
      {line('power', 500)}
      {line('water', 500)}
      {line('permits', 1000)}
      <div className="hot-pair">
        <Field label={words.competent} value={text.competent} onChange={set('competent')} maxLength={100} optional />
        <Field
          label={words.competentName}
          value={text.competentName}
          onChange={set('competentName')}
          maxLength={200}
          optional
        />
      </div>
      {figure('days')}
      <MoneyField
        label={words.dayCost}
        value={text.dayCost}
        onChange={set('dayCost')}
        currency={costIn}
        onCurrency={sheet?.dayCost ? undefined : onCurrency}
        error={tried ? costWrong : undefined}
        optional
      />
      {line('rescue', 1000)}
      {line('note', 4000)}
    </Sheet>
  );
}

const textOf = (sheet: BodyOf<'accessSheet'> | undefined) => {
  return {
    height: fieldText('length', sheet?.height),
    plinth: fieldText('length', sheet?.plinth),
    outreach: fieldText('length', sheet?.outreach),
    waterDepth: fieldText('length', sheet?.waterDepth),
    days: sheet?.days === undefined ? '' : numberTyped(sheet.days),
    equipment: sheet?.equipment ?? '',
    bears: sheet?.bears,
    ground: sheet?.ground ?? '',
    closures: sheet?.closures ?? '',
    power: sheet?.power ?? '',
    water: sheet?.water ?? '',
    permits: sheet?.permits ?? '',
    rescue: sheet?.rescue ?? '',
    note: sheet?.note ?? '',
    competent: sheet?.competent?.role ?? '',
    competentName: sheet?.competent?.name ?? '',
    dayCost: sheet?.dayCost ? moneyTyped(sheet.dayCost) : '',
  };
};
