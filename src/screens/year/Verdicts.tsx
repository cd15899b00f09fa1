import { useState } from 'react';
import { setPlanned } from '../../actions';
import { nameOf, type Thing } from '../../engine/record';
import { yearVerdicts } from '../../engine/trade';
import { type Verdict, type VerdictProposal, verdictOf } from '../../engine/year';
import { date, midSentence, w } from '../../words';
import { Button, Choice, Field, Notice, Section, Sheet } from '../parts';
import { Fold } from '../parts/Fold';
import { Reasons } from '../parts/Reasons';
import { say, useDeed, useDesk, useTyped } from '../shell';
import type { YearAtHand } from './useYear';
import type { YearRow } from './yearRows';

const words = w.year;

const nameOfVerdict = (verdict: Verdict): string => yearVerdicts.find(({ id }) => id === verdict)?.name ?? verdict;

/** How each work goes on: proposed with reasons, said by a named person. */
export function Verdicts({ atHand }: { readonly atHand: YearAtHand }) {
  const { rows, planned, year, when } = atHand;
  const [open, setOpen] = useState<string>();
  const shown = rows.map((row) => {
    const work = row.around.sculpture.thing;
    const of = <T extends { readonly body: { readonly sculpture?: string | undefined } }>(list: readonly T[]) =>
      list.filter(({ body }) => body.sculpture === work);
    const proposal =
      row.facts && when === 'now' ? verdictOf(row.facts, of(planned.campaign), of(planned.incident)) : undefined;
    const said = of(planned.yearVerdict).find(({ body }) => body.year === year);
    return { row, work, proposal, said };
  });
  const opened = shown.find(({ work }) => work === open);
  return (
    <Section title={words.verdictTitle} lead={words.verdictWhat}>
      <p className="soft">{words.verdictWho}</p>
      <ul className="bare year-verdicts">
        {shown.map(({ row, work, proposal, said }) => (
          <li key={work} className="card stack tight">
            <h3>{row.name}</h3>
            {said && (
              <>
                <p className="strong">{nameOfVerdict(said.body.verdict)}</p>
                <p>{said.body.why}</p>
                <p className="soft small">{words.verdictBy(said.body.by, date(said.body.date))}</p>
              </>
            )}
            {when === 'now' ? (
              <Proposed proposal={proposal} put={said !== undefined} />
            ) : (
              !said && <p className="soft">{words.notWritten}</p>
            )}
            <div className="row not-printed">
              <Button
                aria-label={said ? words.verdictChangeOf(row.name) : words.verdictSayOf(row.name)}
                onClick={() => setOpen(work)}
              >
                {said ? words.verdictChange : words.verdictSay}
              </Button>
            </div>
          </li>
        ))}
      </ul>
      {opened && (
        <VerdictSheet
          row={opened.row}
          year={year}
          proposal={opened.proposal}
          said={opened.said}
          onClose={() => setOpen(undefined)}
        />
      )}
    </Section>
  );
}

/** What is proposed; put away once somebody has said it. */
function Proposed({ proposal, put }: { readonly proposal: VerdictProposal | undefined; readonly put: boolean }) {
  if (!proposal) return <p className="soft">{words.workingOut}</p>;
  const proposed = words.verdictProposed(
    proposal.verdict ? midSentence(nameOfVerdict(proposal.verdict)) : words.verdictOpen,
  );
  if (put)
    return (
      <Fold show={proposed} hide={proposed} whenOpened>
        <Reasons reasons={proposal.reasons} />
      </Fold>
    );
  return (
    <>
      <p>{proposed}</p>
      <Reasons reasons={proposal.reasons} />
    </>
  );
}

interface VerdictSheetProps {
  readonly row: YearRow;
  readonly year: number;
  readonly proposal: VerdictProposal | undefined;
  readonly said: Thing<'yearVerdict'> | undefined;
  readonly onClose: () => void;
}

function VerdictSheet({ row, year, proposal, said, onClose }: VerdictSheetProps) {
  const desk = useDesk();
  const [verdict, setVerdict] = useState<Verdict | undefined>(said?.body.verdict ?? proposal?.verdict ?? undefined);
  const [why, setWhy] = useState(said?.body.why ?? '');
  const [by, setBy] = useState(said?.body.by ?? '');
  const [on, setOn] = useState(said?.body.date ?? desk.today());
  const [tried, setTried] = useState(false);
  const typed = useTyped(['verdict of the year', said?.thing, row.around.sculpture.thing, String(year)], {
    verdict: [verdict, setVerdict],
    why: [why, setWhy],
    by: [by, setBy],
    on: [on, setOn],
  });
  const { run, refused, busy } = useDeed(typed);
  const sheet = words.verdictSheet;
  const sculpture = row.around.sculpture.thing;
  const save = () => {
    setTried(true);
    if (!verdict || !why.trim() || !by.trim() || !on) return;
    const body = { ...said?.body, sculpture, year, verdict, why: why.trim(), by: by.trim(), date: on };
    void run(
      () => setPlanned(desk, 'yearVerdict', nameOf.yearVerdict(sculpture, year), body),
      () => {
        say(sheet.saved);
        onClose();
      },
    );
  };
  return (
    <Sheet
      open
      title={sheet.title(row.name, year)}
      onClose={onClose}
      actions={
        <Button kind="main" disabled={busy} onClick={save}>
          {sheet.save}
        </Button>
      }
    >
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      {proposal && <Proposed proposal={proposal} put={false} />}
      <Choice
        label={sheet.which}
        options={yearVerdicts.map(({ id, name, means }) => ({ value: id, label: name, detail: means }))}
        value={verdict}
        onChange={setVerdict}
      />
      <Field
        label={sheet.why}
        kind="long"
        value={why}
        onChange={setWhy}
        maxLength={4000}
        error={tried && !why.trim() ? sheet.whyMissing : undefined}
      />
      <Field
        label={sheet.by}
        value={by}
        onChange={setBy}
        maxLength={200}
        error={tried && !by.trim() ? sheet.byMissing : undefined}
      />
      <Field label={sheet.on} kind="date" value={on} onChange={setOn} short />
    </Sheet>
  );
}
