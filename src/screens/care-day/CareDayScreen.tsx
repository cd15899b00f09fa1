import { useState } from 'react';
import { addPlanned } from '../../actions';
import { readTimeOfDay } from '../../engine/numerals';
import type { BodyOf } from '../../engine/record';
import { cautionsAt } from '../../engine/trade';
import { gateOf } from '../../engine/weather';
import { date, w, workName } from '../../words';
import { Button, LinkButton, Notice, Page, Reading, Section } from '../parts';
import { Fold } from '../parts/Fold';
import { pathTo, say, useDeed, useDesk } from '../shell';
import { NotHere } from '../shell/NotHere';
import { AirEntry } from './AirEntry';
import { emptyAir, readingOf } from './airDraft';
import { type CareOf, coatingsInStore, readingsOf, useCareOf, usualTin } from './careOfWork';
import { ForbiddenHere, LeftAlone } from './ForbiddenHere';
import { GateAnswer, GateWord } from './GateAnswer';
import { GoOnSheet } from './GoOnSheet';
import { ReadingsTable } from './ReadingsTable';
import { RecordSheet } from './RecordSheet';
import { useAir } from './useAir';
import '../parts/lines.css';
import { WhereLimitsComeFrom } from './WhereLimitsComeFrom';
import './careDay.css';

const words = w.careDay;

/** The day of a wash or a wax: what must not be done, the air, go or wait, and what was done in the end. */
export function CareDayScreen({ sculpture }: { readonly sculpture: string }) {
  const care = useCareOf(sculpture);
  if (care === undefined) return <Reading />;
  if (care === null) return <NotHere />;
  return <CareDay care={care} />;
}

function CareDay({ care: { record, planned, products } }: { readonly care: CareOf }) {
  const desk = useDesk();
  const today = desk.today();
  const { thing: sculpture, body } = record.sculpture;
  const readings = readingsOf(planned.weather);
  const tins = coatingsInStore(products);
  const [draft, setDraft] = useAir(sculpture);
  const [tin, setTin] = useState(() => usualTin(record, tins));
  const [earlier, setEarlier] = useState({ day: '', time: '' });
  const [open, setOpen] = useState<'go on' | 'record'>();
  const [written, setWritten] = useState<string>();
  const { run, refused, busy } = useDeed();
  const day = earlier.day || today;
  // A time that cannot be read is never taken for now.
  const time = earlier.time.trim() === '' ? desk.now().slice(11, 16) : readTimeOfDay(earlier.time);
  const reading = time === undefined ? undefined : readingOf(draft, time);
  const product = products.find(({ thing }) => thing === tin)?.body;
  const own = product && draft.before !== 'wash' ? { ...product, product: product.name } : {};
  const gate = reading && gateOf(reading, own);
  const keep = (overridden?: BodyOf<'weather'>['overridden'], kept?: () => void) =>
    reading &&
    gate &&
    run(
      () =>
        addPlanned(desk, 'weather', {
          ...reading,
          sculpture,
          date: day,
          said: gate.says,
          ...(overridden ? { overridden } : {}),
        }),
      () => {
        kept?.();
        say(words.kept(words.says[gate.says]));
        setDraft({ ...emptyAir(draft.before), dry: draft.dry });
        setOpen(undefined);
      },
    );
  const ofDay = readings.filter(({ body }) => body.date === day);
  const before = readings.filter(({ body }) => body.date !== day);
  const place = draft.before === 'wash' ? 'wash' : 'wax';
  return (
    <Page
      title={words.title}
      over={workName({ body })}
      lead={words.lead}
      back={{ to: pathTo.planOfWork(sculpture), label: w.plan.ofWork.title }}
      actions={
        gate ? (
          <>
            <GateWord gate={gate} />
            <Button kind="main" size="round" disabled={busy} onClick={() => keep()}>
              {words.keep}
            </Button>
          </>
        ) : (
          <Button kind={ofDay.length > 0 ? 'main' : 'plain'} size="round" onClick={() => setOpen('record')}>
            {words.record}
          </Button>
        )
      }
    >
      {written && (
        <Notice
          title={words.written(written)}
          actions={<LinkButton to={pathTo.look(sculpture)}>{words.look}</LinkButton>}
        >
          {written !== words.recordKinds.wash && <p>{words.writtenWhat}</p>}
        </Notice>
      )}
      <LeftAlone record={record} />
      <ForbiddenHere sculpture={sculpture} sheet={planned.methodSheet[0]} />
      <div className="care-columns">
        <AirEntry
          draft={draft}
          onChange={setDraft}
          tins={tins}
          tin={tin}
          onTin={setTin}
          last={readings[0]?.body}
          earlier={earlier}
          onEarlier={setEarlier}
        />
        <div className="stack">
          <GateAnswer gate={gate} />
          {refused && open !== 'go on' && <Notice kind="problem" title={refused} />}
          {gate && gate.says !== 'go' && (
            <div className="row by-hand not-printed">
              <Button size="round" disabled={busy} onClick={() => setOpen('go on')}>
                {words.goOn}
              </Button>
            </div>
          )}
          <WhereLimitsComeFrom />
          <Section title={day === today ? words.readings : words.readingsOf(date(day))}>
            {ofDay.length === 0 ? (
              <p className="soft">{words.readingsNone}</p>
            ) : (
              <ReadingsTable readings={ofDay} open />
            )}
            {before.length > 0 && (
              <Fold show={words.readingsEarlier} hide={words.readingsEarlierHide} alsoOnPaper whenOpened>
                <ReadingsTable readings={before} withDay />
              </Fold>
            )}
          </Section>
          <Notice kind="caution" title={w.logbook.take}>
            <ul>
              {cautionsAt(place).map(({ id, text }) => (
                <li key={id}>{text}</li>
              ))}
            </ul>
          </Notice>
        </div>
      </div>
      {open === 'go on' && gate && (
        <GoOnSheet
          sculpture={sculpture}
          gate={gate}
          refused={refused}
          busy={busy}
          onKeep={keep}
          onClose={() => setOpen(undefined)}
        />
      )}
      {open === 'record' && (
        <RecordSheet
          record={record}
          products={products}
          reading={ofDay.find((each) => each.body.before === draft.before) ?? ofDay[0]}
          day={day}
          tin={tin}
          kind={place}
          onClose={() => setOpen(undefined)}
          onWritten={setWritten}
        />
      )}
    </Page>
  );
}
