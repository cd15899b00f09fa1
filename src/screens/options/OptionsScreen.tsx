import { useState } from 'react';
import { tabs } from '../../actions';
import { figuresOf, inOneCurrency, signsOf, speaking } from '../../engine/options';
import type { Reason, Thing } from '../../engine/record';
import { optionSorts } from '../../engine/trade';
import { list, nameOfOption, namesOfOptions, sayReason, w } from '../../words';
import { AddIcon, Button, EmptyState, Notice, Page, Reading, Section } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { Reasons } from '../parts/Reasons';
import { pathTo, useDesk, useMoney, useQuestion } from '../shell';
import { NotHere } from '../shell/NotHere';
import { Favourite } from './Favourite';
import { OptionCard } from './OptionCard';
import { OptionSheet } from './OptionSheet';
import { Quotes } from './Quotes';
import { SideBySide } from './SideBySide';
import { useSituation } from './useSituation';
import { WaitingPrice } from './WaitingPrice';
import '../parts/plainTable.css';
import '../parts/lines.css';
import './options.css';

const words = w.options;

const isStop = ({ code }: Reason): boolean => code === 'option: stop word';

/** The ways to go on with one work, set side by side. */
export function OptionsScreen({ sculpture }: { readonly sculpture: string }) {
  const desk = useDesk();
  const { record, planned, situation, works } = useSituation(sculpture);
  const { rules } = useMoney();
  const mayWrite = useQuestion(tabs(desk)).mode === 'writing';
  const [open, setOpen] = useState<Thing<'option'> | 'new'>();
  if (record === undefined || !planned) return <Reading />;
  if (record === null) return <NotHere />;
  const { option: options, quote: quotes } = planned;
  const { number, title } = record.sculpture.body;
  const names = namesOfOptions(options, record);
  const { rows, apart } = inOneCurrency(
    options.map((option) => figuresOf(option, rules)),
    rules.currency,
  );
  const signs = situation && signsOf(situation);
  const around = { options, record, names, rows, rules, signs, situation };
  const missing = optionSorts.filter(
    ({ id }) => speaking(id, signs ?? []).for.length > 0 && !options.some(({ body }) => body.sort === id),
  );
  return (
    <Page
      title={words.title}
      over={`${number} ${title}`.trim()}
      lead={words.lead}
      back={{ to: pathTo.planOfWork(sculpture), label: w.plan.ofWork.title }}
      actions={
        mayWrite && (
          <Button kind="main" size="round" icon={<AddIcon />} onClick={() => setOpen('new')}>
            {words.add}
          </Button>
        )
      }
    >
      <Notice title={words.who} />
      {!mayWrite && <p className="soft not-printed">{words.readingOnly}</p>}
      <Section title={words.signs}>
        {signs === undefined && <Reading>{words.working}</Reading>}
        {signs?.length === 0 && <p>{words.signsNone}</p>}
        {signs?.filter(isStop).map((reason) => (
          <Notice key={reason.code} kind="stop" title={sayReason(reason, names)} />
        ))}
        <Reasons reasons={signs?.filter((reason) => !isStop(reason)) ?? []} nameOf={names} label={words.signs} />
        {missing.length > 0 && <p>{words.alsoFor(list(missing.map(({ name }) => name)))}</p>}
      </Section>
      <Section title={words.ways}>
        {options.length === 0 && (
          <EmptyState title={words.none}>
            <p>{words.noneWhat}</p>
          </EmptyState>
        )}
        <ul className="bare option-cards">
          {options.map((option) => (
            <OptionCard
              key={option.thing}
              option={option}
              name={nameOfOption(options, option.thing)}
              around={around}
              onEdit={mayWrite ? () => setOpen(option) : undefined}
            />
          ))}
        </ul>
      </Section>
      {apart.map(({ option, reasons }) => (
        <p key={option.thing} className="soft">
          {words.apart(nameOfOption(options, option.thing))}{' '}
          {reasons.map((reason) => sayReason(reason, names)).join(' ')}
        </p>
      ))}
      {rows.length > 0 && <SideBySide around={around} />}
      {rows.length > 1 && <Favourite around={around} />}
      {rows.length > 0 && <WaitingPrice around={around} />}
      <Quotes sculpture={sculpture} quotes={quotes} options={options} mayWrite={mayWrite} />
      {options.length > 0 && <PrintRow how={pathTo.method()} />}
      {open && (
        <OptionSheet
          sculpture={sculpture}
          option={open === 'new' ? undefined : open}
          known={{ record, situation, works, signs: signs ?? [], names }}
          onClose={() => setOpen(undefined)}
        />
      )}
    </Page>
  );
}
