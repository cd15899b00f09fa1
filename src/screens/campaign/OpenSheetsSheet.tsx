import { useState } from 'react';
import { editPlanned } from '../../actions';
import { nameOf } from '../../engine/record';
import { w } from '../../words';
import { Field, Notice, Sheet, SheetActs } from '../parts';
import { say, useDeed, useDesk, useTyped } from '../shell';
import type { OpenFile } from './OfCampaign';

const words = w.bidScores.openSheet;

interface OpenSheetsSheetProps {
  readonly file: OpenFile;
  readonly onClose: () => void;
}

/** Opening the sheets before all are handed in is somebody's deed, and is kept. */
export function OpenSheetsSheet({ file, onClose }: OpenSheetsSheetProps) {
  const desk = useDesk();
  const [by, setBy] = useState('');
  const [why, setWhy] = useState('');
  const [tried, setTried] = useState(false);
  const unkept = useTyped(['open sheets', file.campaign.thing], {
    by: [by, setBy],
    why: [why, setWhy],
  });
  const { run, refused, busy } = useDeed(unkept);
  const keep = () => {
    setTried(true);
    if (!by.trim()) return;
    const opened = { on: desk.today(), by: by.trim(), ...(why.trim() ? { why: why.trim() } : {}) };
    void run(
      () => editPlanned(desk, 'bidCriteria', nameOf.bidCriteria(file.campaign.thing), { opened }),
      () => {
        say(words.saved);
        onClose();
      },
    );
  };
  return (
    <Sheet
      open
      title={words.title}
      onClose={onClose}
      actions={<SheetActs save={words.save} onSave={keep} busy={busy} />}
    >
      {unkept.line}
      {refused && <Notice kind="problem" title={refused} />}
      <Field
        label={words.by}
        value={by}
        onChange={setBy}
        maxLength={200}
        error={tried && !by.trim() ? words.byMissing : undefined}
      />
      <Field label={words.why} kind="long" value={why} onChange={setWhy} maxLength={1000} optional />
    </Sheet>
  );
}
