import { date, w } from '../../words';
import { LinkButton, Notice, Tick } from '../parts';
import { Select } from '../parts/Select';
import { pathTo } from '../shell';
import { daysOf, rowsOn, wholeYear } from './dayPlanned';
import type { YearAtHand } from './useYear';

const words = w.year;

export interface DayChosen {
  readonly day: string;
  readonly wash: boolean;
  readonly wax: boolean;
}

/** The next day planned, else the whole year. */
export const dayFirst = (atHand: YearAtHand, today: string): DayChosen => ({
  day: daysOf(atHand).find((day) => day >= today) ?? wholeYear,
  wash: true,
  wax: true,
});

interface DayChoiceProps {
  readonly atHand: YearAtHand;
  readonly chosen: DayChosen;
  readonly onChange: (chosen: DayChosen) => void;
}

/** For which day, and whether it is washed and waxed too. */
export function DayChoice({ atHand, chosen, onChange }: DayChoiceProps) {
  return (
    <div className="stack not-printed">
      {rowsOn(atHand, chosen.day).some(({ kept }) => !kept) && (
        <Notice title={words.notKept} actions={<LinkButton to={pathTo.year()}>{words.briefing.toYear}</LinkButton>} />
      )}
      <Select
        label={words.dayOf}
        value={chosen.day}
        onChange={(day) => onChange({ ...chosen, day })}
        options={[
          ...daysOf(atHand).map((value) => ({ value, label: date(value) })),
          { value: wholeYear, label: words.allDays },
        ]}
      />
      <Tick label={words.wash} checked={chosen.wash} onChange={(wash) => onChange({ ...chosen, wash })} />
      <Tick label={words.wax} checked={chosen.wax} onChange={(wax) => onChange({ ...chosen, wax })} />
    </div>
  );
}
