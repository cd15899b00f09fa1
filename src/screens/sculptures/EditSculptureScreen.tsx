import { useLocation } from 'wouter';
import { type AroundTheWork, aroundTheWork, editSculpture, removeSculpture, sculptureRecordOf } from '../../actions';
import type { BodyOf } from '../../engine/record';
import { w } from '../../words';
import { Button, Page, Reading } from '../parts';
import { pathTo, say, useDeed, useDesk, useQuestion } from '../shell';
import { NotHere } from '../shell/NotHere';
import { bodyFrom, emptyText, SculptureForm, type SculptureText } from './SculptureForm';

const words = w.sculptures.form;

const textOf = (body: BodyOf<'sculpture'>, around: AroundTheWork): SculptureText => {
  const { number, title, maker = '', date = '', materials = '', dimensions = '', note = '' } = body;
  return {
    ...emptyText,
    number,
    title,
    maker,
    date,
    materials,
    dimensions,
    note,
    place: around.place,
    access: around.access,
  };
};

export function EditSculptureScreen({ sculpture }: { readonly sculpture: string }) {
  const desk = useDesk();
  const [, go] = useLocation();
  const { run, refused, busy } = useDeed();
  const record = useQuestion(sculptureRecordOf(desk, sculpture));
  const around = useQuestion(aroundTheWork(desk, sculpture));
  if (record === undefined || around === undefined) return <Reading />;
  if (record === null) return <NotHere />;
  const { body } = record.sculpture;
  const start = textOf(body, around);

  return (
    <Page title={words.editTitle} over={body.number} back={{ to: pathTo.sculpture(sculpture), label: body.title }}>
      <SculptureForm
        work={sculpture}
        start={start}
        doIt={words.save}
        refused={refused}
        busy={busy}
        onDone={(text, kept) =>
          run(
            () => editSculpture(desk, sculpture, bodyFrom(text), { place: text.place, access: text.access }),
            () => {
              kept();
              say(words.saved);
              go(pathTo.sculpture(sculpture));
            },
          )
        }
        more={
          <Button
            kind="danger"
            disabled={busy}
            onClick={() =>
              run(
                () => removeSculpture(desk, sculpture),
                () => {
                  say(words.removed(body.title));
                  go(pathTo.sculptures());
                },
              )
            }
          >
            {words.remove}
          </Button>
        }
      />
      <p className="soft">{words.removeWhat}</p>
    </Page>
  );
}
