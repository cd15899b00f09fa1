import { useState } from 'react';
import type { Row } from '../../engine/year';
import { w } from '../../words';
import { Button, Choice, Field, Notice, Sheet, Tick } from '../parts';
import { say, useDeed, useDesk, useTyped } from '../shell';
import { keepYear } from './keepYear';
import type { YearAtHand } from './useYear';
import { Why } from './Why';
import type { YearRow } from './yearRows';

const words = w.year.sheet;
const surveys = ['full', 'look', 'none'] as const;
const waxes = ['0', '1', '2'] as const;

interface WorkSheetProps {
  readonly atHand: YearAtHand;
  readonly row: YearRow;
  readonly onClose: () => void;
}

/** What one work gets in a year, as she says it. */
export function WorkSheet({ atHand, row, onClose }: WorkSheetProps) {
  const desk = useDesk();
  const work = row.around.sculpture.thing;
  const start: Row = row.row ?? { work, survey: 'none', waxes: 0 };
  const [survey, setSurvey] = useState<Row['survey']>(start.survey);
  const [wax, setWax] = useState(String(start.waxes) as (typeof waxes)[number]);
  const [day, setDay] = useState(start.day ?? '');
  const [lift, setLift] = useState(start.lift === true);
  const typed = useTyped(['work of the year', undefined, work, String(atHand.year)], {
    survey: [survey, setSurvey],
    wax: [wax, setWax],
    day: [day, setDay],
    lift: [lift, setLift],
  });
  const { run, refused, busy } = useDeed(typed);
  const keep = (own: Row | undefined) => {
    const works = atHand.rows.flatMap((other) => {
      if (other.around.sculpture.thing === work) return own ?? [];
      return other.kept && other.row ? other.row : [];
    });
    return run(
      () => keepYear(desk, atHand, { works }),
      () => {
        say(words.saved);
        onClose();
      },
    );
  };
  const said: Row = {
    work,
    survey,
    waxes: Number(wax),
    ...(day ? { day } : {}),
    ...(lift ? { lift: true as const } : {}),
  };
  return (
    <Sheet
      open
      title={row.name}
      onClose={onClose}
      actions={
        <>
          {row.kept && (
            <Button disabled={busy} onClick={() => keep(undefined)}>
              {words.asProposed}
            </Button>
          )}
          <Button kind="main" disabled={busy} onClick={() => keep(said)}>
            {words.save}
          </Button>
        </>
      }
    >
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      <Why row={row} />
      <Choice
        label={w.year.survey}
        options={surveys.map((value) => ({ value, label: w.year.surveys[value], detail: words.surveyWhat[value] }))}
        value={survey}
        onChange={setSurvey}
      />
      <Choice
        label={w.year.waxes}
        tiles="narrow"
        options={waxes.map((value, i) => ({ value, label: words.waxOptions[i] ?? value }))}
        value={wax}
        onChange={setWax}
      />
      <Field label={words.day} hint={words.dayHint} kind="date" value={day} onChange={setDay} short optional />
      <Tick label={words.liftNeeded} checked={lift} onChange={setLift} />
    </Sheet>
  );
}
