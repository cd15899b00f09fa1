import { useState } from 'react';
import { Link } from 'wouter';
import { orderZones, sculptureRecordOf } from '../../actions';
import { endOf, type SculptureRecord, type Thing } from '../../engine/record';
import { area, date, share, w, whole, workName } from '../../words';
import { AddIcon, Button, DownIcon, EmptyState, LinkButton, Notice, Page, Reading, Section, UpIcon } from '../parts';
import { pathTo, say, useDeed, useDesk, useQuestion } from '../shell';
import { NotHere } from '../shell/NotHere';
import { areaToday } from './areaToday';
import { JoinZones } from './JoinZones';
import { exposureWords } from './ZoneTable';
import { advice, zoneAdvice } from './zoneAdvice';
import '../parts/lines.css';
import './zones.css';

const words = w.sculptures.zone;

/** The zones in walking order, to be moved, added, joined. */
export function ZonesScreen({ sculpture }: { readonly sculpture: string }) {
  const desk = useDesk();
  const record = useQuestion(sculptureRecordOf(desk, sculpture));
  const [joining, setJoining] = useState(false);
  if (record === undefined) return <Reading />;
  if (record === null) return <NotHere />;
  const { body } = record.sculpture;
  const living = record.zones.filter((zone) => endOf(zone) === undefined);
  return (
    <Page
      title={words.title}
      over={workName({ body })}
      lead={living.length > 1 ? words.lead : undefined}
      back={{ to: pathTo.sculpture(sculpture), label: body.title || w.sculptures.untitled }}
      actions={
        <>
          {living.length > 1 && (
            <Button size="round" onClick={() => setJoining(true)}>
              {words.join}
            </Button>
          )}
          <LinkButton to={pathTo.newZone(sculpture)} kind="main" size="round" icon={<AddIcon />}>
            {words.add}
          </LinkButton>
        </>
      }
    >
      {living.length === 0 ? (
        <EmptyState title={words.empty}>
          <p>{words.emptyWhat}</p>
        </EmptyState>
      ) : (
        <>
          <Advice zones={living} />
          <Walk sculpture={sculpture} zones={living} />
        </>
      )}
      <Ended record={record} />
      {joining && <JoinZones zones={living} onClose={() => setJoining(false)} />}
    </Page>
  );
}

function Advice({ zones }: { readonly zones: readonly Thing<'zone'>[] }) {
  const { tooMany, tooLarge } = zoneAdvice(zones);
  return (
    <>
      {tooMany && (
        <Notice title={words.tooMany(whole(zones.length))}>
          <p>{words.tooManyWhat(whole(advice.mostZones))}</p>
        </Notice>
      )}
      {tooLarge && (
        <Notice title={words.tooLarge(tooLarge.zone.body.letter, share(tooLarge.share))}>
          <p>{words.tooLargeWhat(share(advice.largestShare))}</p>
        </Notice>
      )}
    </>
  );
}

function Walk({ sculpture, zones }: { readonly sculpture: string; readonly zones: readonly Thing<'zone'>[] }) {
  const desk = useDesk();
  const { run, refused, busy } = useDeed();
  const move = (from: number, to: number) => {
    const order = zones.map(({ thing }) => thing);
    const [moved] = order.splice(from, 1);
    if (moved === undefined) return;
    order.splice(to, 0, moved);
    return run(
      () => orderZones(desk, sculpture, order),
      () => say(words.moved(zones[from]?.body.letter ?? '', whole(to + 1))),
    );
  };
  return (
    <>
      {refused && <Notice kind="problem" title={refused} />}
      <ol className="walk bare">
        {zones.map((zone, i) => (
          <li key={zone.thing} className="walk-zone by-hand">
            <Link href={pathTo.zone(sculpture, zone.thing)} className="line">
              <span className="zone-letter">{zone.body.letter}</span>
              <span className="grow">
                <span className="strong">{zone.body.name}</span>
                <span className="soft line-detail">
                  {[area(areaToday(zone)), exposureWords(zone.body.exposure)].filter(Boolean).join(' · ')}
                </span>
              </span>
            </Link>
            <span className="walk-moves">
              <Button
                disabled={busy || i === 0}
                aria-label={words.up(zone.body.letter, zone.body.name)}
                icon={<UpIcon />}
                onClick={() => move(i, i - 1)}
              />
              <Button
                disabled={busy || i === zones.length - 1}
                aria-label={words.down(zone.body.letter, zone.body.name)}
                icon={<DownIcon />}
                onClick={() => move(i, i + 1)}
              />
            </span>
          </li>
        ))}
      </ol>
    </>
  );
}

/** Zones split or joined stay readable: earlier rounds speak of them. */
function Ended({ record }: { readonly record: SculptureRecord }) {
  const ended = record.zones.filter((zone) => endOf(zone) !== undefined);
  if (ended.length === 0) return null;
  return (
    <Section title={words.ended}>
      <ul>
        {ended.map(({ thing, body }) => (
          <li key={thing}>
            {body.split
              ? words.endedSplit(body.letter, body.name, date(body.split.on))
              : words.endedJoined(body.letter, body.name, date(body.joined?.on ?? ''))}
          </li>
        ))}
      </ul>
    </Section>
  );
}
