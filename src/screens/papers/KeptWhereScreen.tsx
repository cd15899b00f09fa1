import { useState } from 'react';
import { plannedAll, sculptureList } from '../../actions';
import type { Thing } from '../../engine/record';
import { keptThingOf, keptThings } from '../../engine/trade';
import { date, w, workName } from '../../words';
import { AddIcon, Button, EmptyState, Page, Reading, Section } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { pathTo, useDesk, useQuestion } from '../shell';
import { KeptWhereSheet } from './KeptWhereSheet';

const words = w.paperKept;
type Kept = Thing<'keptWhere'>;

/** Keys, panels, samples: what somebody after us has to find. */
export function KeptWhereScreen() {
  const desk = useDesk();
  const planned = useQuestion(plannedAll(desk));
  const works = useQuestion(sculptureList(desk));
  const [open, setOpen] = useState<Kept | 'new'>();
  const back = { to: pathTo.papers(), label: w.paperHub.back };
  if (!planned || !works)
    return (
      <Page title={words.title} lead={words.lead} back={back}>
        <Reading />
      </Page>
    );
  const names = new Map(works.map(({ thing, body }) => [thing, workName({ body })]));
  const all = planned.keptWhere;
  const sorts = [...keptThings.map(({ id }) => id), ...new Set(all.map(({ body }) => body.sort))].filter(
    (id, i, ids) => ids.indexOf(id) === i && all.some(({ body }) => body.sort === id),
  );
  return (
    <Page
      title={words.title}
      lead={words.lead}
      back={back}
      actions={
        <Button kind="main" icon={<AddIcon />} onClick={() => setOpen('new')}>
          {words.add}
        </Button>
      }
    >
      {all.length === 0 ? (
        <EmptyState title={words.empty}>
          <p>{words.emptyWhat}</p>
        </EmptyState>
      ) : (
        <>
          {sorts.map((sort) => (
            <Section key={sort} title={keptThingOf(sort)?.name ?? sort}>
              <ul className="bare stack">
                {all
                  .filter(({ body }) => body.sort === sort)
                  .map((one) => (
                    <li key={one.thing} className="card stack tight">
                      <One one={one} work={names.get(one.body.sculpture ?? '')} onChange={() => setOpen(one)} />
                    </li>
                  ))}
              </ul>
            </Section>
          ))}
          <p className="soft">{words.stays}</p>
          <PrintRow />
        </>
      )}
      {open && (
        <KeptWhereSheet
          one={open === 'new' ? undefined : open}
          works={[...names].map(([value, label]) => ({ value, label }))}
          onClose={() => setOpen(undefined)}
        />
      )}
    </Page>
  );
}

interface OneProps {
  readonly one: Kept;
  readonly work: string | undefined;
  readonly onChange: () => void;
}

function One({ one: { body }, work, onChange }: OneProps) {
  const name = body.what || keptThingOf(body.sort)?.name || body.sort;
  return (
    <>
      <p>
        <span className="strong">{name}</span>
        {work && <span className="soft"> {work}</span>}
      </p>
      <p>{body.where}</p>
      <p className="soft">{[body.who, body.found && words.seenOn(date(body.found))].filter(Boolean).join(', ')}</p>
      {body.note && <p className="small">{body.note}</p>}
      <div className="row not-printed">
        <Button aria-label={words.changeOf(name)} onClick={onChange}>
          {words.change}
        </Button>
      </div>
    </>
  );
}
