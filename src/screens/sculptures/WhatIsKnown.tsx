import { aroundTheWork } from '../../actions';
import type { SculptureRecord } from '../../engine/record';
import { date, w } from '../../words';
import { LinkButton, Section } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';

const words = w.sculptures.work;

/** Maker, date, materials, and apart from them place and access. What is not said is not shown. */
export function WhatIsKnown({ record }: { readonly record: SculptureRecord }) {
  const { thing, body } = record.sculpture;
  const around = useQuestion(aroundTheWork(useDesk(), thing));
  const rows = [
    [words.maker, body.maker],
    [words.date, body.date && date(body.date)],
    [words.materials, body.materials],
    [words.dimensions, body.dimensions],
    [words.place, around?.place],
    [words.access, around?.access],
    [words.note, body.note],
  ].filter(([, said]) => said);
  return (
    <Section title={words.known} actions={<LinkButton to={pathTo.editSculpture(thing)}>{words.edit}</LinkButton>}>
      {rows.length === 0 && <p className="soft">{words.nothingSaid}</p>}
      <dl className="known">
        {rows.map(([name, said]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{said}</dd>
          </div>
        ))}
      </dl>
    </Section>
  );
}
