import { useState } from 'react';
import type { SculptureRecord, Thing } from '../../engine/record';
import { cautionsAt } from '../../engine/trade';
import { w } from '../../words';
import { AddIcon, Button, Notice, OnIcon, Section } from '../parts';
import { InsertSheet } from './InsertSheet';

const words = w.inserts;

/** What is set into the bronze and bears less than it, with the cautions that go with it. */
export function Inserts({ record }: { readonly record: SculptureRecord }) {
  const [open, setOpen] = useState<Thing<'insert'> | 'new'>();
  const letters = new Map(record.zones.map(({ thing, body }) => [thing, body.letter]));
  return (
    <Section
      title={words.title}
      lead={words.lead}
      actions={
        <Button icon={<AddIcon />} onClick={() => setOpen('new')}>
          {words.add}
        </Button>
      }
    >
      {record.inserts.length === 0 && <p className="soft">{words.none}</p>}
      <ul className="lines bare">
        {record.inserts.map((insert) => {
          const { count, material, removable, zone, note, where, maker, makerKnown, materialBy } = insert.body;
          const letter = zone && letters.get(zone);
          return (
            <li key={insert.thing}>
              <button type="button" className="line" onClick={() => setOpen(insert)}>
                <span className="grow">
                  <span className="strong">{words.row(String(count), material)}</span>
                  <span className="soft line-detail">
                    {[
                      letter && w.sculptures.zone.edit(letter, zoneName(record, zone)),
                      where,
                      materialBy && words.materialByWords[materialBy],
                      maker ? words.madeBy(maker) : makerKnown === false && words.makerNotKnown,
                      words.removableWords[removable],
                      note,
                    ]
                      .filter(Boolean)
                      .join(' · ')}
                  </span>
                </span>
                <OnIcon />
              </button>
            </li>
          );
        })}
      </ul>
      {record.inserts.length > 0 &&
        cautionsAt('insert').map(({ id, name, text }) => (
          <Notice key={id} kind="caution" title={name}>
            <p>{text}</p>
          </Notice>
        ))}
      {open && (
        <InsertSheet record={record} insert={open === 'new' ? undefined : open} onClose={() => setOpen(undefined)} />
      )}
    </Section>
  );
}

const zoneName = (record: SculptureRecord, zone: string | undefined): string =>
  record.zones.find(({ thing }) => thing === zone)?.body.name ?? '';
