import { useState } from 'react';
import { useLocation } from 'wouter';
import { addZone, sculptureRecordOf } from '../../actions';
import { endOf, type SculptureRecord } from '../../engine/record';
import { w, workName } from '../../words';
import { Button, FormActs, Page, Reading } from '../parts';
import { pathTo, say, useDeed, useDesk, useQuestion, useTyped } from '../shell';
import { NotHere } from '../shell/NotHere';
import { ZoneForm } from './ZoneForm';
import { fieldsFrom, newZoneText } from './zoneText';

const words = w.sculptures.zone;

export function NewZoneScreen({ sculpture }: { readonly sculpture: string }) {
  const record = useQuestion(sculptureRecordOf(useDesk(), sculpture));
  if (record === undefined) return <Reading />;
  if (record === null) return <NotHere />;
  return <NewZone record={record} />;
}

function NewZone({ record }: { readonly record: SculptureRecord }) {
  const desk = useDesk();
  const [, go] = useLocation();
  const { thing: sculpture, body } = record.sculpture;
  const last = record.zones.filter((zone) => endOf(zone) === undefined).at(-1);
  const [text, setText] = useState(() => newZoneText(last?.body, desk.today()));
  const [tried, setTried] = useState(false);
  const typed = useTyped(['zone', undefined, sculpture], { text: [text, setText] });
  const { run, refused, busy } = useDeed(typed);
  const add = (more: boolean) => {
    setTried(true);
    const fields = fieldsFrom(text);
    if (!fields) return;
    return run(
      () => addZone(desk, sculpture, fields),
      ({ letter }) => {
        say(words.added(letter, fields.name));
        if (!more) return go(pathTo.zones(sculpture));
        setTried(false);
        setText({ ...text, name: '', letter: '', note: '', area: newZoneText(undefined, desk.today()).area });
        scrollTo(0, 0);
      },
    );
  };
  return (
    <Page title={words.newTitle} over={workName({ body })} back={{ to: pathTo.zones(sculpture), label: words.title }}>
      {typed.line}
      <ZoneForm text={text} onChange={setText} tried={tried} refused={refused} onSubmit={() => add(false)}>
        <FormActs>
          <Button size="round" disabled={busy} onClick={() => add(true)}>
            {words.addMore}
          </Button>
          <Button type="submit" kind="main" size="round" disabled={busy}>
            {words.addDo}
          </Button>
        </FormActs>
      </ZoneForm>
    </Page>
  );
}
