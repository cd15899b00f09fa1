import { useState } from 'react';
import { quoteStanding } from '../../engine/options';
import type { Thing } from '../../engine/record';
import { date, money, nameOfOption, sayReason, w } from '../../words';
import { AddIcon, Button, OnIcon, Section } from '../parts';
import { useDesk } from '../shell';
import { QuoteSheet } from './QuoteSheet';

const words = w.options;

interface QuotesProps {
  readonly sculpture: string;
  readonly quotes: readonly Thing<'quote'>[];
  readonly options: readonly Thing<'option'>[];
  readonly mayWrite: boolean;
}

/** Prices that somebody gave, the last first, and how long each still stands. */
export function Quotes({ sculpture, quotes, options, mayWrite }: QuotesProps) {
  const today = useDesk().today();
  const [open, setOpen] = useState<Thing<'quote'> | 'new'>();
  const sorted = [...quotes].sort((a, b) => b.body.date.localeCompare(a.body.date));
  return (
    <Section
      title={words.quotes}
      lead={words.quotesLead}
      actions={
        mayWrite && (
          <span className="not-printed">
            <Button icon={<AddIcon />} onClick={() => setOpen('new')}>
              {words.addQuote}
            </Button>
          </span>
        )
      }
    >
      {sorted.length === 0 && <p className="soft">{words.quotesNone}</p>}
      <ul className="lines bare">
        {sorted.map((quote) => {
          const { who, what, amount, option, state } = quote.body;
          const { word, reason } = quoteStanding(quote.body, today);
          const told = (
            <>
              <span className="grow">
                <span className="strong">{money(amount)}</span> {who}{' '}
                <span className={word === 'expired' || word === 'ends soon' ? 'chip strong' : 'chip'}>
                  {words.standing[word]}
                </span>
                <span className="soft line-detail">
                  {[what, words.states[state], date(quote.body.date), option && nameOfOption(options, option)]
                    .filter(Boolean)
                    .join(' · ')}
                </span>
                <span className="line-detail">{sayReason(reason)}</span>
              </span>
              {mayWrite && <OnIcon />}
            </>
          );
          return (
            <li key={quote.thing}>
              {mayWrite ? (
                <button type="button" className="line" onClick={() => setOpen(quote)}>
                  {told}
                </button>
              ) : (
                <div className="line">{told}</div>
              )}
            </li>
          );
        })}
      </ul>
      {open && (
        <QuoteSheet
          sculpture={sculpture}
          quote={open === 'new' ? undefined : open}
          quotes={quotes}
          options={options}
          onClose={() => setOpen(undefined)}
        />
      )}
    </Section>
  );
}
