import { useState } from 'react';
import { causesFirst } from '../../engine/campaign';
import { type SculptureRecord, type Thing, zonesAt } from '../../engine/record';
import { type Cause, causeOf } from '../../engine/trade';
import { date, lettersOf, w } from '../../words';
import { AddIcon, Button, Notice, OnIcon } from '../parts';
import { Reasons } from '../parts/Reasons';
import { useDesk } from '../shell';
import { CauseSheet, type CauseStart } from './CauseSheet';

const words = w.campaign.causes;

interface CausesFirstProps {
  readonly record: SculptureRecord;
  readonly causes: readonly Thing<'cause'>[];
}

/** What feeds the damage of a work: what was said of it, and what is still worth looking for. */
export function CausesFirst({ record, causes }: CausesFirstProps) {
  const today = useDesk().today();
  const [open, setOpen] = useState<CauseStart>();
  const { waits, reasons, lookFor } = causesFirst(zonesAt(record, today), causes, today);
  return (
    <>
      <Notice kind={waits ? 'caution' : 'note'} title={waits ? words.waits : words.settled}>
        <Reasons reasons={reasons} />
      </Notice>
      {causes.length > 0 && (
        <ul className="lines bare">
          {causes.map((cause) => (
            <li key={cause.thing}>
              <button type="button" className="line" onClick={() => setOpen({ cause })}>
                <span className="grow">
                  <span className="strong">{causeOf(cause.body.sort)?.name ?? cause.body.sort}</span>
                  <span className="soft line-detail">{lineOf(record, cause)}</span>
                  {cause.body.seen && <span className="line-detail">{cause.body.seen}</span>}
                  {cause.body.why && <span className="line-detail">{cause.body.why}</span>}
                </span>
                <OnIcon />
              </button>
            </li>
          ))}
        </ul>
      )}
      <div className="row not-printed">
        <Button icon={<AddIcon />} onClick={() => setOpen({})}>
          {words.add}
        </Button>
      </div>
      {lookFor.length > 0 && (
        <div className="stack">
          <h3>{words.lookFor}</h3>
          <p className="soft">{words.lookForWhat}</p>
          <ul className="bare cause-cards">
            {lookFor.map(({ cause, zones }) => (
              <CauseToLookFor
                key={cause.id}
                cause={cause}
                letters={lettersOf(record, zones)}
                onAnswer={() => setOpen({ sort: cause.id, zones })}
              />
            ))}
          </ul>
        </div>
      )}
      {open && <CauseSheet record={record} start={open} onClose={() => setOpen(undefined)} />}
    </>
  );
}

const lineOf = (record: SculptureRecord, { body }: Thing<'cause'>): string => {
  const where = body.zones.length === 0 ? words.whole : words.zones(lettersOf(record, body.zones));
  const { changed } = body;
  return [where, words.states[body.state], date(changed ?? body.found)].join(' · ');
};

interface CauseToLookForProps {
  readonly cause: Cause;
  readonly letters: string;
  readonly onAnswer: () => void;
}

function CauseToLookFor({ cause, letters, onAnswer }: CauseToLookForProps) {
  return (
    <li className="card stack tight">
      <h4 className="strong">
        {cause.name} <span className="soft">· {words.zones(letters)}</span>
      </h4>
      <p className="small">
        {words.signs}: {cause.signs}
      </p>
      <p className="small">
        {words.remedy}: {cause.remedy}
      </p>
      <p className="small soft">
        {words.who}: {cause.who}
      </p>
      <div className="row not-printed">
        <Button aria-label={words.answer(cause.name)} onClick={onAnswer}>
          {w.campaign.approvals.answer}
        </Button>
      </div>
    </li>
  );
}
