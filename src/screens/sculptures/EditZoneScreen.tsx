import { useState } from 'react';
import { useLocation } from 'wouter';
import { editZone, removeZone, sculptureRecordOf } from '../../actions';
import type { SculptureRecord, Thing } from '../../engine/record';
import { area, date, w, whole, workName } from '../../words';
import { Button, Field, FormActs, Notice, Page, Reading } from '../parts';
import { pathTo, say, useDeed, useDesk, useQuestion, useTyped } from '../shell';
import { NotHere } from '../shell/NotHere';
import { PhotosOfZone } from './PhotosOfZone';
import { SplitZone } from './SplitZone';
import { ZoneForm } from './ZoneForm';
import { fieldsFrom, isRedrawn, zoneTextOf } from './zoneText';

const words = w.sculptures.zone;

export function EditZoneScreen({ sculpture, zone }: { readonly sculpture: string; readonly zone: string }) {
  const record = useQuestion(sculptureRecordOf(useDesk(), sculpture));
  if (record === undefined) return <Reading />;
  const here = record?.zones.find(({ thing }) => thing === zone);
  if (!record || !here) return <NotHere title={words.notHere} />;
  // A new lead is another form: what someone else kept meanwhile must not be typed over unseen.
  return <EditZone key={here.lead.id} record={record} zone={here} />;
}

function EditZone({
  record,
  zone: { thing, body },
}: {
  readonly record: SculptureRecord;
  readonly zone: Thing<'zone'>;
}) {
  const desk = useDesk();
  const [, go] = useLocation();
  const sculpture = record.sculpture.thing;
  const visits = record.visits.filter((visit) => visit.body.zone === thing).length;
  const [text, setText] = useState(() => zoneTextOf(body, desk.today()));
  const [tried, setTried] = useState(false);
  const [splitting, setSplitting] = useState(false);
  const typed = useTyped(['zone', thing], { text: [text, setText] });
  const { run, refused, busy } = useDeed(typed);
  const redrawn = isRedrawn(text, body);
  const versions = visits > 0 && redrawn;
  const save = () => {
    setTried(true);
    const fields = fieldsFrom(text);
    if (!fields) return;
    const { area: areaSaid, substrate, ...plain } = fields;
    const patch = redrawn ? { ...plain, area: areaSaid, substrate, ...(versions ? { since: text.since } : {}) } : plain;
    return run(
      () => editZone(desk, thing, patch),
      ({ versioned }) => {
        say(versioned ? words.versioned : words.saved);
        go(pathTo.zones(sculpture));
      },
    );
  };
  return (
    <Page
      title={words.editTitle(body.letter, body.name)}
      over={workName(record.sculpture)}
      back={{ to: pathTo.zones(sculpture), label: words.title }}
    >
      {typed.line}
      <ZoneForm
        text={text}
        onChange={setText}
        tried={tried}
        refused={refused}
        onSubmit={save}
        before={
          <Notice title={visits > 0 ? words.visits(visits) : words.notVisited}>
            {visits > 0 && <p>{words.visitedWhat}</p>}
            {body.versions.length > 1 && (
              <ul>
                {body.versions.map(({ n, since, area: { m2 } }) => (
                  <li key={n}>{words.versionOf(whole(n), date(since), area(m2))}</li>
                ))}
              </ul>
            )}
          </Notice>
        }
      >
        {versions && (
          <Notice kind="caution" title={words.willVersion}>
            <p>{words.willVersionWhat}</p>
            <Field
              label={words.since}
              kind="date"
              value={text.since}
              onChange={(since) => setText({ ...text, since })}
              short
            />
          </Notice>
        )}
        <FormActs>
          <Button onClick={() => setSplitting(true)}>{words.split}</Button>
          {visits === 0 && (
            <Button
              kind="danger"
              disabled={busy}
              onClick={() =>
                run(
                  () => removeZone(desk, thing),
                  () => {
                    say(words.removed);
                    go(pathTo.zones(sculpture));
                  },
                )
              }
            >
              {words.remove}
            </Button>
          )}
          <Button type="submit" kind="main" size="round" disabled={busy}>
            {words.save}
          </Button>
        </FormActs>
      </ZoneForm>
      <PhotosOfZone sculpture={sculpture} zone={thing} />
      {splitting && (
        <SplitZone sculpture={sculpture} zone={thing} name={body.name} onClose={() => setSplitting(false)} />
      )}
    </Page>
  );
}
