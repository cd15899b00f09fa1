import { useState } from 'react';
import { thingsOf } from '../../actions';
import { linesOf, type QuantityLine } from '../../engine/campaign';
import { zonesAt } from '../../engine/record';
import { type WorkItem, workItemOf, workItems } from '../../engine/trade';
import { area, seenText, w } from '../../words';
import { Button, Choices, Notice, Sheet } from '../parts';
import { say, useDeed, useDesk, useQuestion } from '../shell';
import type { OpenFile } from './OfCampaign';
import { keepLines } from './scheduleOf';

const words = w.campaign.quantities;

interface MakeLinesSheetProps {
  readonly file: OpenFile;
  readonly lines: readonly QuantityLine[];
  readonly onClose: () => void;
}

/** Zones and tasks in, lines out; what is there already is left as it is. */
export function MakeLinesSheet({ file, lines, onClose }: MakeLinesSheetProps) {
  const desk = useDesk();
  const { record, today } = file;
  const photos = useQuestion(thingsOf(desk, 'photo', record.sculpture.thing)) ?? [];
  const living = zonesAt(record, today);
  const [zones, setZones] = useState<readonly string[]>(() => living.map(({ thing }) => thing));
  const [tasks, setTasks] = useState<readonly string[]>([]);
  const [tried, setTried] = useState(false);
  const { run, refused, busy } = useDeed();
  const zonesMissing = zones.length === 0 && tasks.some((task) => workItemOf(task)?.per === 'zone');
  const save = () => {
    setTried(true);
    if (zonesMissing || tasks.length === 0) return;
    const made = linesOf(record, lines, { zones, tasks, photos, today }).map(({ line, seen }) =>
      seen ? { ...line, condition: seenText(seen) } : line,
    );
    return run(
      () => keepLines(desk, file, [...lines, ...made]),
      () => {
        say(words.makeSaid(made.length));
        onClose();
      },
    );
  };
  const offered = workItems.filter(({ per }) => per !== 'insert' || record.inserts.length > 0);
  return (
    <Sheet
      open
      title={words.makeTitle}
      onClose={onClose}
      actions={
        <Button kind="main" disabled={busy} onClick={save}>
          {words.makeDo}
        </Button>
      }
    >
      {refused && <Notice kind="problem" title={refused} />}
      <Choices
        label={words.tasks}
        tiles="full"
        hint={words.tasksHint}
        options={offered.map((item) => ({ value: item.id, label: item.name, detail: detailOf(item) }))}
        values={tasks}
        onChange={setTasks}
        error={tried && tasks.length === 0 ? words.tasksMissing : undefined}
      />
      <Choices
        label={words.zones}
        options={living.map(({ thing, body }) => ({
          value: thing,
          label: w.sculptures.zone.edit(body.letter, body.name),
          detail: area(body.versions.at(-1)?.area.m2 ?? 0),
        }))}
        values={zones}
        onChange={setZones}
        error={tried && zonesMissing ? words.zonesMissing : undefined}
      />
    </Sheet>
  );
}

const detailOf = ({ per }: WorkItem): string | undefined =>
  per === 'insert' ? words.perInsert : per === 'once' ? words.once : undefined;
