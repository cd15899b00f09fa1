import { useState } from 'react';
import { packingOf, timeOf, timeOfAll } from '../../engine/year';
import { date, w } from '../../words';
import { EmptyState, LinkButton, Notice, Page, Reading, Section, Tick } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { pathTo, useDesk } from '../shell';
import { RecordState } from '../shell/RecordState';
import { DayChoice, type DayChosen, dayFirst } from './DayChoice';
import { rowsOn, visitsOn, wholeYear } from './dayPlanned';
import { OwnItems } from './OwnItems';
import { useTicks } from './useTicks';
import { useYear, type YearAtHand } from './useYear';
import { yearOf } from './yearRows';
import './year.css';

const words = w.year;

/** What to take along on a day, worked out from what is planned; ticked as it goes into the car. */
export function PackingScreen() {
  const desk = useDesk();
  const atHand = useYear(yearOf(desk.today()));
  const [chosen, setChosen] = useState<DayChosen>();
  const back = { to: pathTo.year(), label: words.title };
  if (!atHand)
    return (
      <Page title={words.packing.title} back={back}>
        <Reading />
      </Page>
    );
  const on = chosen ?? dayFirst(atHand, desk.today());
  return (
    <Page
      title={words.packing.title}
      over={on.day === wholeYear ? words.of(atHand.year) : date(on.day)}
      lead={words.packing.lead}
      back={back}
    >
      <DayChoice atHand={atHand} chosen={on} onChange={setChosen} />
      <Packing key={on.day} atHand={atHand} on={on} />
    </Page>
  );
}

function Packing({ atHand, on }: { readonly atHand: YearAtHand; readonly on: DayChosen }) {
  const ticks = useTicks(atHand.planned, 'packing', on.day === wholeYear ? String(atHand.year) : on.day);
  const visits = visitsOn(atHand, on.day, on);
  const rows = rowsOn(atHand, on.day);
  const items = packingOf(visits);
  const names = new Map(
    rows.map(({ around, name }) => [around.sculpture.thing, around.sculpture.body.number.trim() || name]),
  );
  if (items.length === 0)
    return (
      <EmptyState
        title={words.packing.empty}
        actions={
          <LinkButton kind="main" to={pathTo.year()}>
            {words.briefing.toYear}
          </LinkButton>
        }
      />
    );
  const left = items.filter(({ id }) => ticks.tickedOn(id) === undefined).length;
  const { pace, labour } = atHand.around;
  // Of a work waxed twice a year a day holds one wax.
  const times = rows.flatMap(({ facts, row, around, time }) => {
    if (on.day === wholeYear) return time ?? [];
    return facts && row ? timeOf(facts, { ...row, waxes: Math.min(1, row.waxes) }, around.stations, pace, labour) : [];
  });
  const { survey, wax } = timeOfAll(times, pace, labour);
  const access = rows.filter(({ around }) => around.access);
  return (
    <>
      {ticks.refused && <Notice kind="problem" title={ticks.refused} />}
      <p className="strong" role="status">
        {words.packing.left(left, items.length)}
      </p>
      <div className="tick-list">
        {items.map(({ id, name, works, count }) => (
          <Tick
            key={id}
            label={count ? words.packing.count(name, count) : name}
            detail={
              works.length > 0 && works.length < rows.length
                ? words.packing.works(works.map((work) => names.get(work) ?? work))
                : undefined
            }
            checked={ticks.tickedOn(id) !== undefined}
            onChange={(checked) => ticks.turn(id, checked)}
          />
        ))}
      </div>
      <OwnItems ticks={ticks} />
      <Section title={words.timeTitle} lead={words.timeWhat}>
        <p className="figures">
          {words.timeSurvey}: {words.lasting(survey.value)} ({words.lastingRange(survey.low, survey.high)})
        </p>
        {on.wax && (
          <p className="figures">
            {words.timeWax}: {words.lasting(wax.value)} ({words.lastingRange(wax.low, wax.high)})
          </p>
        )}
      </Section>
      {access.length > 0 && (
        <Section title={words.packing.access}>
          <dl className="stack tight">
            {access.map(({ around, name }) => (
              <div key={name}>
                <dt className="strong">{name}</dt>
                <dd>{around.access}</dd>
              </div>
            ))}
          </dl>
        </Section>
      )}
      <div className="row not-printed">
        <LinkButton to={pathTo.ready()}>{w.ready.link}</LinkButton>
      </div>
      <PrintRow />
      <RecordState />
    </>
  );
}
