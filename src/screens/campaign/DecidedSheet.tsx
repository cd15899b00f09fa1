import { useState } from 'react';
import { editPlanned } from '../../actions';
import type { BodyOf, Thing } from '../../engine/record';
import { w } from '../../words';
import { Field, Notice, Sheet, SheetActs } from '../parts';
import { say, useDeed, useDesk, useTyped } from '../shell';

const words = w.bidScores.decideSheet;

interface DecidedSheetProps {
  readonly campaign: Thing<'campaign'>;
  readonly bid: BodyOf<'bid'>;
  readonly onClose: () => void;
}

/** The person who decided on a bid, and why. */
export function DecidedSheet({ campaign, bid, onClose }: DecidedSheetProps) {
  const desk = useDesk();
  const { takenBy, takenOn, takenWhy } = campaign.body;
  const [role, setRole] = useState(takenBy?.role ?? '');
  const [name, setName] = useState(takenBy?.name ?? '');
  const [on, setOn] = useState<string>(takenOn ?? desk.today());
  const [why, setWhy] = useState(takenWhy ?? '');
  const [tried, setTried] = useState(false);
  const unkept = useTyped(['decided', campaign.thing], {
    role: [role, setRole],
    name: [name, setName],
    on: [on, setOn],
    why: [why, setWhy],
  });
  const { run, refused, busy } = useDeed(unkept);
  const keep = () => {
    setTried(true);
    if (!role.trim()) return;
    const by = { role: role.trim(), ...(name.trim() ? { name: name.trim() } : {}) };
    const patch = { takenBy: by, takenOn: on || undefined, takenWhy: why.trim() || undefined };
    void run(
      () => editPlanned(desk, 'campaign', campaign.thing, patch),
      () => {
        say(words.saved);
        onClose();
      },
    );
  };
  return (
    <Sheet
      open
      title={words.title(bid.who)}
      onClose={onClose}
      actions={<SheetActs save={words.save} onSave={keep} busy={busy} />}
    >
      {unkept.line}
      {refused && <Notice kind="problem" title={refused} />}
      <Field
        label={words.role}
        value={role}
        onChange={setRole}
        maxLength={100}
        error={tried && !role.trim() ? words.roleMissing : undefined}
      />
      <Field label={words.name} value={name} onChange={setName} maxLength={200} optional />
      <Field label={words.on} kind="date" value={on} onChange={setOn} short optional />
      <Field
        label={words.why}
        hint={words.whyHint}
        kind="long"
        value={why}
        onChange={setWhy}
        maxLength={2000}
        optional
      />
    </Sheet>
  );
}
