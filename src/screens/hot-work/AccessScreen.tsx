import { useState } from 'react';
import { tabs } from '../../actions';
import { daysWithWeather, ladderAngle, ladderTo, workingReach } from '../../engine/heat';
import { times } from '../../engine/money';
import { type BodyOf, endOf, type SculptureRecord } from '../../engine/record';
import { cautionsAt, heightRules, reaches, weatherFloat, workingReachStanding } from '../../engine/trade';
import { list, measureNumber, money, number, share, sourceSaid, w, workName } from '../../words';
import { Button, EmptyState, Notice, Page, Section } from '../parts';
import { Fold } from '../parts/Fold';
import { PrintRow } from '../parts/PrintRow';
import { pathTo, useDesk, useQuestion } from '../shell';
import { AccessForm } from './AccessForm';
import { type Around, AroundWork } from './AroundWork';
import { personText } from './insertNames';
import '../parts/plainTable.css';
import './hotWork.css';

const words = w.accessSheet;

/** How the work is reached and what stands in the way, on one page. */
export function AccessScreen({ sculpture }: { readonly sculpture: string }) {
  return <AroundWork sculpture={sculpture} show={(around) => <Access around={around} />} />;
}

function Access({ around }: { readonly around: Around }) {
  const { record, planned } = around;
  const mayWrite = useQuestion(tabs(useDesk())).mode === 'writing';
  const [editing, setEditing] = useState(false);
  const sheet = planned.accessSheet[0]?.body;
  const { thing, body } = record.sculpture;
  return (
    <Page
      title={words.title}
      over={workName({ body })}
      lead={words.lead}
      back={{ to: pathTo.sculpture(thing), label: body.title || w.sculptures.untitled }}
      actions={
        mayWrite && (
          <Button kind="main" size="round" onClick={() => setEditing(true)}>
            {sheet ? words.edit : words.write}
          </Button>
        )
      }
    >
      <Notice kind="caution" title={words.decide}>
        <p>{words.decideWhat}</p>
      </Notice>
      {!sheet && (
        <EmptyState title={words.empty}>
          <p>{words.emptyWhat}</p>
        </EmptyState>
      )}
      {sheet && <Facts rows={saidRows(sheet)} />}
      {sheet && <WorkedOut sheet={sheet} />}
      <ZonesByReach record={record} />
      <ul>
        {cautionsAt('ladder').map(({ id, text }) => (
          <li key={id}>{text}</li>
        ))}
        {sheet?.waterDepth ? cautionsAt('basin').map(({ id, text }) => <li key={id}>{text}</li>) : null}
      </ul>
      <Rules />
      <PrintRow />
      {editing && <AccessForm sculpture={thing} sheet={sheet} onClose={() => setEditing(false)} />}
    </Page>
  );
}

type Row = readonly [what: string, said: string, why?: string];

const saidRows = (sheet: BodyOf<'accessSheet'>): Row[] => {
  const metres = (n: number | undefined) => (n === undefined ? '' : words.metres(measureNumber('length', n, 2)));
  return [
    [words.height, metres(sheet.height)],
    [words.plinth, metres(sheet.plinth)],
    [words.equipment, reaches.find(({ id }) => id === sheet.equipment)?.name ?? sheet.equipment ?? ''],
    [words.outreach, metres(sheet.outreach)],
    [words.ground, sheet.ground ?? ''],
    [words.bears, sheet.bears ? words.bearsWords[sheet.bears] : ''],
    [words.waterDepth, metres(sheet.waterDepth)],
    [words.closures, sheet.closures ?? ''],
    [words.power, sheet.power ?? ''],
    [words.water, sheet.water ?? ''],
    [words.permits, sheet.permits ?? ''],
    [words.person, sheet.competent ? personText(sheet.competent) : ''],
    [words.days, sheet.days === undefined ? '' : words.daysOf(number(sheet.days, 0))],
    [words.dayCost, sheet.dayCost ? money(sheet.dayCost) : ''],
    [words.rescue, sheet.rescue ?? ''],
    [words.note, sheet.note ?? ''],
  ];
};

function Facts({ rows }: { readonly rows: readonly Row[] }) {
  return (
    <dl className="hot-facts">
      {rows.map(([what, said, why]) => (
        <Fact key={what} what={what} said={said} why={why} />
      ))}
    </dl>
  );
}

function Fact({ what, said, why }: { readonly what: string; readonly said: string; readonly why: string | undefined }) {
  return (
    <>
      <dt>{what}</dt>
      <dd>
        {said ? <span className="strong">{said}</span> : <span className="soft">{words.notSaid}</span>}
        {why && <span className="soft small hot-why">{why}</span>}
      </dd>
    </>
  );
}

/** What follows from the height, and from the days. */
function WorkedOut({ sheet }: { readonly sheet: BodyOf<'accessSheet'> }) {
  const rows: Row[] = [];
  const { height, plinth = 0, days, dayCost } = sheet;
  if (height !== undefined) {
    const up = workingReach(plinth, height);
    const { length, foot } = ladderTo(plinth + height);
    rows.push(
      [
        words.reach,
        words.metres(measureNumber('length', up, 1)),
        words.reachWhat(measureNumber('length', workingReachStanding.value, 1)),
      ],
      [
        words.ladder,
        words.ladderIs(measureNumber('length', length, 1), measureNumber('length', foot, 2)),
        words.ladderWhat(number(ladderAngle, 2)),
      ],
    );
  }
  if (days !== undefined) {
    const all = daysWithWeather(days);
    rows.push([words.daysWith, words.daysOf(number(all, 0)), words.daysWithWhat(share(weatherFloat.value))]);
    if (dayCost) rows.push([words.cost, money(times(dayCost, all))]);
  }
  if (rows.length === 0) return null;
  return (
    <Section title={words.workedOut}>
      <Facts rows={rows} />
    </Section>
  );
}

function ZonesByReach({ record }: { readonly record: SculptureRecord }) {
  const zones = record.zones.filter((zone) => endOf(zone) === undefined);
  const rows = reaches.flatMap(({ id, name }): Row[] => {
    const here = zones.filter(({ body }) => body.reach === id);
    return here.length === 0 ? [] : [[name, list(here.map(({ body }) => `${body.letter} ${body.name}`))]];
  });
  if (rows.length === 0) return null;
  return (
    <Section title={words.zones}>
      <Facts rows={rows} />
    </Section>
  );
}

function Rules() {
  const value = { share: () => words.share, m: words.metres, load: words.times };
  return (
    <Fold show={words.rules} hide={words.rulesShut} alsoOnPaper>
      <p className="soft">{w.hotWork.rulesWhat}</p>
      <table className="plain-table cards">
        <thead>
          <tr>
            <th scope="col">{w.hotWork.rule}</th>
            <th scope="col">{w.hotWork.asks}</th>
            <th scope="col">{w.hotWork.from}</th>
          </tr>
        </thead>
        <tbody>
          {heightRules.map((rule) => (
            <tr key={rule.id}>
              <th scope="row">{rule.name}</th>
              <td data-head={w.hotWork.asks}>
                {value[rule.unit](rule.unit === 'm' ? measureNumber('length', rule.value, 1) : number(rule.value, 1))}
              </td>
              <td data-head={w.hotWork.from}>{sourceSaid(rule.source)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Fold>
  );
}
