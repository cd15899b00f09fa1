import { useLocation } from 'wouter';
import { addSculpture } from '../../actions';
import { w } from '../../words';
import { Page } from '../parts';
import { pathTo, say, useDeed, useDesk } from '../shell';
import { bodyFrom, emptyText, SculptureForm } from './SculptureForm';

export function NewSculptureScreen() {
  const desk = useDesk();
  const [, go] = useLocation();
  const { run, refused, busy } = useDeed();
  return (
    <Page title={w.sculptures.form.newTitle} back={{ to: pathTo.sculptures(), label: w.sculptures.work.back }}>
      <SculptureForm
        work={undefined}
        start={emptyText}
        doIt={w.sculptures.form.add}
        refused={refused}
        busy={busy}
        onDone={(text, kept) =>
          run(
            () => addSculpture(desk, bodyFrom(text), { place: text.place, access: text.access }),
            ({ sculpture }) => {
              kept();
              say(w.sculptures.form.added(text.title.trim()));
              go(pathTo.sculpture(sculpture));
            },
          )
        }
      />
    </Page>
  );
}
