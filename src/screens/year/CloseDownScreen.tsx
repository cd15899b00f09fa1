import { closeDownOf } from '../../engine/year';
import { date, w } from '../../words';
import { EmptyState, LinkButton, Notice, Page, Reading, Section, Tick } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { pathTo, useDesk } from '../shell';
import { visitsAll } from './dayPlanned';
import { OwnItems } from './OwnItems';
import { useTicks } from './useTicks';
import { useYear, type YearAtHand } from './useYear';
import { yearOf } from './yearRows';
import './year.css';

const words = w.year.closeDown;

/** What is done before the first frost, once for the garden and work by work. */
export function CloseDownScreen() {
  const atHand = useYear(yearOf(useDesk().today()));
  const back = { to: pathTo.year(), label: w.year.title };
  return (
    <Page title={words.title} over={atHand && w.year.of(atHand.year)} lead={words.lead} back={back}>
      {atHand ? <CloseDown atHand={atHand} /> : <Reading />}
    </Page>
  );
}

function CloseDown({ atHand }: { readonly atHand: YearAtHand }) {
  const ticks = useTicks(atHand.planned, 'close-down', String(atHand.year));
  const steps = closeDownOf(visitsAll(atHand));
  if (atHand.rows.length === 0)
    return (
      <EmptyState
        title={w.year.empty}
        actions={<LinkButton to={pathTo.sculptures()}>{w.year.toSculptures}</LinkButton>}
      />
    );
  const left = steps.filter(({ key }) => ticks.tickedOn(key) === undefined).length;
  const list = (work: string | undefined) => (
    <div className="tick-list">
      {steps
        .filter((step) => step.work === work)
        .map(({ key, name }) => {
          const on = ticks.tickedOn(key);
          return (
            <Tick
              key={key}
              label={name}
              detail={on && w.year.ticked(date(on))}
              checked={on !== undefined}
              onChange={(checked) => ticks.turn(key, checked)}
            />
          );
        })}
    </div>
  );
  return (
    <>
      {ticks.refused && <Notice kind="problem" title={ticks.refused} />}
      <p className="strong" role="status">
        {words.left(left, steps.length)}
      </p>
      <Section title={words.garden}>
        {list(undefined)}
        <OwnItems ticks={ticks} />
      </Section>
      {atHand.rows.map(({ around, name }) => (
        <Section key={around.sculpture.thing} title={name}>
          {list(around.sculpture.thing)}
        </Section>
      ))}
      <PrintRow />
    </>
  );
}
