import { useMemo, useState } from 'react';
import { type Insights, insightsOf, sculptureRecordOf, surveyors } from '../../actions';
import type { SculptureRecord } from '../../engine/record';
import { thingNames, w, workName } from '../../words';
import { EmptyState, LinkButton, Page, Reading, Section } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { Select } from '../parts/Select';
import { pathTo, UnderWay, useDesk, useQuestion } from '../shell';
import { Done } from './Done';
import { FollowedSeries } from './FollowedSeries';
import { Holds } from './Holds';
import { SeenCells } from './SeenCells';
import { TakesOff } from './TakesOff';
import { WhereItGrew } from './WhereItGrew';
import './overTime.css';

const words = w.overTime;
const whole = '';

/** One work from round to round: its figures, its coatings, what was done. */
export function OverTimeScreen({ sculpture }: { readonly sculpture: string }) {
  const desk = useDesk();
  const record = useQuestion(sculptureRecordOf(desk, sculpture));
  const insights = useQuestion(insightsOf(desk, sculpture));
  return (
    <Page
      title={words.title}
      over={record ? workName(record.sculpture) : undefined}
      lead={words.lead}
      back={{ to: pathTo.sculpture(sculpture), label: words.back }}
    >
      {record === null || insights === null ? (
        <EmptyState title={words.gone} />
      ) : record && record.rounds.length === 0 ? (
        <EmptyState
          title={words.noRounds}
          actions={<LinkButton to={pathTo.startRound(sculpture)}>{words.startRound}</LinkButton>}
        />
      ) : (
        <>
          <UnderWay what="figures" />
          {record && insights ? <Years record={record} insights={insights} /> : <Reading>{words.reading}</Reading>}
        </>
      )}
    </Page>
  );
}

function Years({ record, insights }: { readonly record: SculptureRecord; readonly insights: Insights }) {
  const people = useQuestion(surveyors(useDesk()));
  const nameOf = useMemo(() => thingNames(record, people ?? []), [record, people]);
  const [zone, setZone] = useState(whole);
  const { trends } = insights;
  const own = trends.zones.find((row) => row.zone === zone);
  const shown = own ? { index: own.index, ...own.active } : trends.work;
  const letters = new Map(record.zones.map((row) => [row.thing, row.body]));
  return (
    <>
      <div className="not-printed">
        <Select
          label={words.chooseZone}
          value={zone}
          onChange={setZone}
          options={[
            { value: whole, label: words.wholeWork },
            ...trends.zones.map(({ zone: thing }) => ({
              value: thing,
              label: words.zone(letters.get(thing)?.letter ?? '?', letters.get(thing)?.name ?? ''),
            })),
          ]}
        />
      </div>
      <Section title={words.index}>
        <FollowedSeries record={record} followed={shown.index} nextRound={trends.nextRound} nameOf={nameOf} />
      </Section>
      {(['green', 'bare', 'scale'] as const).map((what) =>
        shown[what].series.points.some(({ figure }) => figure.value > 0) ? (
          <Section key={what} title={words.active[what]}>
            <FollowedSeries record={record} followed={shown[what]} nextRound={trends.nextRound} nameOf={nameOf} />
          </Section>
        ) : null,
      )}
      {!own && <SeenCells record={record} />}
      {!own && <WhereItGrew trends={trends} nameOf={nameOf} />}
      <Holds record={record} insights={insights} only={own?.zone} nameOf={nameOf} />
      <TakesOff need={insights.need} only={own?.zone} letters={letters} />
      <Done record={record} only={own?.zone} />
      <PrintRow how={pathTo.method()} />
    </>
  );
}
