import { takeOverList } from '../../actions';
import type { WorkHere } from '../../engine/bring';
import { w, whole } from '../../words';
import { Button, FileButton, FormActs, Notice } from '../parts';
import { say, useDeed, useDesk } from '../shell';
import { HowToRead } from './HowToRead';
import { RowByRow } from './RowByRow';
import { useList } from './useList';

const words = w.bring;

/** A list of treatments: opened, its columns said, seen row by row, taken over as one deed. */
export function BringList({ works }: { readonly works: readonly WorkHere[] }) {
  const desk = useDesk();
  const { list, said, read, problem, open, change, close } = useList(works);
  const { run, refused, busy } = useDeed();
  const taken = read?.rows.flatMap(({ treatment }) => treatment ?? []) ?? [];
  const out = (read?.rows.length ?? 0) - taken.length;
  const take = () =>
    run(
      () => takeOverList(desk, taken, said?.source ?? ''),
      (came) => {
        close();
        say(`${words.taken(came.taken, came.here)} ${came.taken > 0 ? words.undoHint : ''}`.trim());
      },
    );
  return (
    <div className="stack">
      <p className="soft">{words.listWhat}</p>
      {problem && <Notice kind="problem" title={problem} />}
      <div className="row not-printed">
        <FileButton
          accept=".csv,.tsv,.txt,text/csv,text/plain"
          kind={list ? 'plain' : 'main'}
          onFile={(f) => void open(f)}
        >
          {list ? words.otherList : words.chooseList}
        </FileButton>
      </div>
      {list && said && read && (
        <>
          <p className="bring-cell">
            {words.listRead(list.name, words.rows(list.rows.length, whole(list.rows.length)), list.encoding)}
          </p>
          <HowToRead said={said} read={read} works={works} change={change} />
          <RowByRow rows={read.rows} works={works} />
          {out > 0 && <p className="soft">{words.takeSome(words.rows(out, whole(out)))}</p>}
          {refused && <Notice kind="problem" title={refused} />}
          <FormActs>
            <Button kind="main" size="round" disabled={busy || taken.length === 0} onClick={() => void take()}>
              {words.take(taken.length, whole(taken.length))}
            </Button>
          </FormActs>
        </>
      )}
    </div>
  );
}
