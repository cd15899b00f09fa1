import { useState } from 'react';
import { tabs } from '../../actions';
import type { BodyOf, Thing } from '../../engine/record';
import { beddings } from '../../engine/trade';
import { date, w, workName } from '../../words';
import { Button, EmptyState, LinkButton, Notice, Page, PhotosHere } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { pathTo, useDesk, useQuestion } from '../shell';
import { type Around, AroundWork } from './AroundWork';
import { HeatTalk } from './HeatTalk';
import { InsertCareSheet } from './InsertCareSheet';
import { insertName, insertPlace, limitText } from './insertNames';
import './hotWork.css';

const words = w.insertCare;

/** What is set into the work, what heat it bears by whose word, and how it is kept from it. */
export function InsertsScreen({ sculpture }: { readonly sculpture: string }) {
  return <AroundWork sculpture={sculpture} show={(around) => <Inserts around={around} />} />;
}

function Inserts({ around }: { readonly around: Around }) {
  const { record, planned } = around;
  const desk = useDesk();
  const mayWrite = useQuestion(tabs(desk)).mode === 'writing';
  const [open, setOpen] = useState<Thing<'insert'>>();
  const { thing, body } = record.sculpture;
  const careOf = (insert: string) => planned.insertCare.find((care) => care.body.insert === insert)?.body;
  return (
    <Page
      title={words.title}
      over={workName({ body })}
      lead={words.lead}
      back={{ to: pathTo.sculpture(thing), label: body.title || w.sculptures.untitled }}
    >
      <Notice kind="stop" title={words.unknown}>
        <p>{words.unknownWhat}</p>
      </Notice>
      {record.inserts.length === 0 && (
        <EmptyState title={words.none} actions={<LinkButton to={pathTo.sculpture(thing)}>{words.toWork}</LinkButton>}>
          <p>{words.noneWhat}</p>
        </EmptyState>
      )}
      <ul className="bare hot-inserts">
        {record.inserts.map((insert) => {
          const name = insertName(record, insert);
          const care = careOf(insert.thing);
          return (
            <li key={insert.thing} className="hot-card">
              <div className="row">
                <h2 className="grow hot-name">{name}</h2>
                {mayWrite && (
                  <span className="not-printed">
                    <Button aria-label={words.editOf(name)} onClick={() => setOpen(insert)}>
                      {words.edit}
                    </Button>
                  </span>
                )}
              </div>
              {insertPlace(record, insert) !== '' && <p>{insertPlace(record, insert)}</p>}
              <p className={limitText(care) ? 'strong' : undefined}>{limitText(care) ?? words.fact.noLimit}</p>
              <p>{care?.method ? words.keptBy(words.methods[care.method]) : words.fact.noMethod}</p>
              {care?.shield && <p className="file-name">{care.shield}</p>}
              {care?.takenOut && <p>{words.out(date(care.takenOut), care.putBack ? date(care.putBack) : '')}</p>}
              <p className="soft">{factsOf(insert, care).join(' · ')}</p>
              {care?.condition && <p className="file-name">{care.condition}</p>}
              {insert.body.note && <p className="soft file-name">{insert.body.note}</p>}
              {care?.photos && care.photos.length > 0 && (
                <PhotosHere desk={desk} sculpture={thing} as="other" label={words.photos(name)} photos={care.photos} />
              )}
            </li>
          );
        })}
      </ul>
      <HeatTalk />
      {record.inserts.length > 0 && <PrintRow />}
      {open && (
        <InsertCareSheet
          record={record}
          insert={open}
          name={insertName(record, open)}
          care={careOf(open.thing)}
          onClose={() => setOpen(undefined)}
        />
      )}
    </Page>
  );
}

const factsOf = ({ body }: Thing<'insert'>, care: BodyOf<'insertCare'> | undefined): string[] => {
  const bedding = beddings.find(({ id }) => id === care?.bedding);
  return [
    body.materialBy && w.inserts.materialByWords[body.materialBy],
    body.maker ? w.inserts.madeBy(body.maker) : body.makerKnown === false && w.inserts.makerNotKnown,
    words.removable[body.removable],
    bedding && words.setIn(bedding.name, bedding.caution ?? ''),
    care?.fixings,
    care?.spare && words.spare,
    care?.watcher && words.watchedBy(care.watcher),
  ].filter((said): said is string => Boolean(said));
};
