import { useState } from 'react';
import type { ShotList } from '../../actions';
import type { Thing } from '../../engine/record';
import { date, w } from '../../words';
import { AddIcon, Button, OnIcon, Section } from '../parts';
import { SquareSeries } from './SquareSeries';
import { SquareSheet } from './SquareSheet';

const words = w.stations.squares;

/** The best and the worst square of the work. */
export function Squares({ list }: { readonly list: ShotList }) {
  const [open, setOpen] = useState<Thing<'sentinel'> | 'new'>();
  const { sentinels, zonesToday: zones } = list;
  const names = new Map([...list.zones, ...zones].map(({ thing, body }) => [thing, words.row(body.letter, body.name)]));
  const has = (which: 'best' | 'worst') => sentinels.some(({ body }) => body.which === which);
  return (
    <Section
      title={words.title}
      lead={words.lead}
      actions={
        zones.length > 0 && (
          <Button icon={<AddIcon />} onClick={() => setOpen('new')}>
            {words.add}
          </Button>
        )
      }
    >
      {zones.length === 0 && <p>{words.noZones}</p>}
      {zones.length > 0 && sentinels.length === 0 && <p className="soft">{words.none}</p>}
      {sentinels.length > 0 && (
        <ul className="lines bare">
          {sentinels.map((sentinel) => {
            const { which, zone, find, since, note } = sentinel.body;
            return (
              <li key={sentinel.thing}>
                <button type="button" className="line" onClick={() => setOpen(sentinel)}>
                  <SquareMark which={which} />
                  <span className="grow">
                    <span className="strong">{[words.edit(which), names.get(zone)].filter(Boolean).join(', ')}</span>
                    <span className="line-detail">{find}</span>
                    <span className="soft line-detail">
                      {[words.sinceDay(date(since)), note].filter(Boolean).join(' · ')}
                    </span>
                  </span>
                  <OnIcon />
                </button>
                <SquareSeries
                  sculpture={sentinel.body.sculpture}
                  sentinel={sentinel}
                  name={[words.edit(which), names.get(zone)].filter(Boolean).join(', ')}
                />
              </li>
            );
          })}
        </ul>
      )}
      {sentinels.length > 0 && !has('worst') && <p className="soft">{words.onlyBest}</p>}
      {sentinels.length > 0 && !has('best') && <p className="soft">{words.onlyWorst}</p>}
      {open && (
        <SquareSheet list={list} sentinel={open === 'new' ? undefined : open} onClose={() => setOpen(undefined)} />
      )}
    </Section>
  );
}

/** A square: whole for the best, eaten at for the worst. */
export function SquareMark({ which }: { readonly which: 'best' | 'worst' }) {
  return (
    <svg className="square-mark" width="40" height="40" viewBox="0 0 40 40" aria-hidden="true">
      <rect x="3" y="3" width="34" height="34" />
      {which === 'worst' && <path d="M3 22 11 15 18 24 26 12 31 20 37 14V37H3Z" />}
    </svg>
  );
}
