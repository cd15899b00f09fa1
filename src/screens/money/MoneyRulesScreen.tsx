import { useState } from 'react';
import { plannedOfCollection, setPlanned, tabs } from '../../actions';
import { defaultMoneyRules, rulesOf } from '../../engine/money';
import { type BodyOf, nameOf } from '../../engine/record';
import { w } from '../../words';
import { Button, Field, FormActs, Notice, Page, Reading } from '../parts';
import { pathTo, say, useDeed, useDesk, useQuestion, useTyped } from '../shell';
import { RateFromInterest } from './RateFromInterest';
import { defaultsText, type RulesFault, type RulesText, readRules, rulesText } from './rulesText';

const words = w.money;

/** Currency, rate, rise of prices, contingency, years and spending share of this collection. */
export function MoneyRulesScreen() {
  const kept = useQuestion(plannedOfCollection(useDesk()));
  const body = kept?.moneyRules[0]?.body;
  return (
    <Page title={words.title} lead={words.lead} back={{ to: pathTo.plan(), label: words.back }} narrow>
      {kept ? <RulesForm key={body?.version ?? 0} body={body} /> : <Reading />}
    </Page>
  );
}

function RulesForm({ body }: { readonly body: BodyOf<'moneyRules'> | undefined }) {
  const desk = useDesk();
  const mayWrite = useQuestion(tabs(desk)).mode === 'writing';
  const [text, setText] = useState<RulesText>(() => rulesText(rulesOf(body)));
  const [faults, setFaults] = useState<RulesFault>({});
  const typed = useTyped(['money rules', 'all'], { text: [text, setText] });
  const { run, refused, busy } = useDeed(typed);
  const field = (key: keyof RulesText, unit?: string, hint?: string) => (
    <Field
      label={words[key]}
      hint={hint}
      kind={key === 'currency' ? 'text' : 'number'}
      value={text[key]}
      onChange={(value) => setText({ ...text, [key]: key === 'currency' ? value.toUpperCase() : value })}
      error={faults[key]}
      {...(unit === undefined ? { maxLength: 3 } : { unit, maxLength: 8 })}
      short
    />
  );
  const keep = () => {
    const read = readRules(text);
    setFaults('faults' in read ? read.faults : {});
    if ('faults' in read) return;
    const version = (body?.version ?? 0) + 1;
    void run(
      () => setPlanned(desk, 'moneyRules', nameOf.moneyRules(desk.collection), { version, ...read.rules }),
      () => say(words.kept(version)),
    );
  };
  return (
    <>
      {body ? <p className="soft">{words.version(body.version)}</p> : <Notice title={words.notSet} />}
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      <div className="stack">
        {field('currency', undefined, words.currencyHint)}
        {field('rate', words.perYear, words.rateHint)}
        {mayWrite && <RateFromInterest onTake={(rate) => setText({ ...text, rate })} />}
        {field('growth', words.perYear, words.growthHint)}
        {field('contingency', words.percent, words.contingencyHint)}
        {field('years', words.yearsUnit)}
        {field('spending', words.perYear, words.spendingHint)}
      </div>
      {!mayWrite && <p className="soft not-printed">{words.readOnly}</p>}
      {mayWrite && (
        <FormActs>
          {body && !isDefault(body) && (
            <Button onClick={() => setText(defaultsText(text.currency))}>{words.reset}</Button>
          )}
          <Button kind="main" size="round" disabled={busy} onClick={keep}>
            {words.keep}
          </Button>
        </FormActs>
      )}
    </>
  );
}

const isDefault = (body: BodyOf<'moneyRules'>): boolean =>
  Object.entries(defaultMoneyRules).every(([key, value]) => body[key] === value);
