import { useState } from 'react';
import { methodsOn } from '../../engine/care';
import { nameOf, type Thing } from '../../engine/record';
import { cautionsAt, kindOf, methodOf, stopRules } from '../../engine/trade';
import { date, number, w } from '../../words';
import { EmptyState, LinkButton, Notice, Page, Reading, Section } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { pathTo, useDesk } from '../shell';
import { RecordState } from '../shell/RecordState';
import { DayChoice, type DayChosen, dayFirst } from './DayChoice';
import { rowsOn, visitsOn, wholeYear } from './dayPlanned';
import { useYear, type YearAtHand } from './useYear';
import type { YearRow } from './yearRows';
import { yearOf } from './yearRows';
import './year.css';

const words = w.year.briefing;

/** One page for whoever helps: what is done where, what never, when to stop, whom to call. */
export function BriefingScreen() {
  const desk = useDesk();
  const atHand = useYear(yearOf(desk.today()));
  const [chosen, setChosen] = useState<DayChosen>();
  const back = { to: pathTo.year(), label: w.year.title };
  if (!atHand)
    return (
      <Page title={words.title} back={back}>
        <Reading />
      </Page>
    );
  const on = chosen ?? dayFirst(atHand, desk.today());
  return (
    <div className="briefing">
      <Page
        title={words.title}
        over={on.day === wholeYear ? words.forYear(atHand.year) : words.forDay(date(on.day))}
        lead={words.lead}
        back={back}
      >
        <DayChoice atHand={atHand} chosen={on} onChange={setChosen} />
        <Briefing atHand={atHand} on={on} />
      </Page>
    </div>
  );
}

const methodName = (id: string): string => methodOf(id)?.name ?? id;

function Briefing({ atHand, on }: { readonly atHand: YearAtHand; readonly on: DayChosen }) {
  const rows = rowsOn(atHand, on.day);
  if (rows.length === 0)
    return (
      <EmptyState
        title={words.none}
        actions={
          <LinkButton kind="main" to={pathTo.year()}>
            {words.toYear}
          </LinkButton>
        }
      />
    );
  const sheets = rows.map(({ around, name }) => {
    const of = nameOf.methodSheet(around.sculpture.thing);
    return { name, ...methodsOn(atHand.planned.methodSheet.find(({ thing }) => thing === of)) };
  });
  const [first, ...others] = sheets;
  const everywhere = (first?.forbidden ?? []).filter((id) => others.every(({ forbidden }) => forbidden.includes(id)));
  const own = sheets.flatMap(({ name, forbidden, alsoForbidden }) => {
    const more = [...forbidden.filter((id) => !everywhere.includes(id)).map(methodName), ...alsoForbidden];
    return more.length > 0 ? [words.forbiddenHere(name, more)] : [];
  });
  const visits = visitsOn(atHand, on.day, on);
  const high = visits.some(
    ({ zones, survey }) => survey === 'full' && zones.some(({ body }) => body.reach !== 'ground'),
  );
  const cautions = new Map(
    [
      ...(high ? cautionsAt('ladder') : []),
      ...(visits.some(({ wash }) => wash) ? cautionsAt('wash') : []),
      ...(visits.some(({ wax }) => wax) ? cautionsAt('wax') : []),
      ...(visits.some(
        ({ water, zones }) => (water ?? 0) > 0 || zones.some(({ body }) => body.exposure.includes('waterline')),
      )
        ? cautionsAt('basin')
        : []),
    ].map((caution) => [caution.id, caution]),
  );
  const { helpers, contacts } = atHand.plan?.body ?? {};
  const sheetOf = ({ around }: YearRow) =>
    atHand.planned.accessSheet.find(({ thing }) => thing === nameOf.accessSheet(around.sculpture.thing));
  const hot = atHand.planned.hotDay.filter(({ body }) => body.date === on.day && !body.closed);
  return (
    <>
      {hot.map(({ thing, body }) => {
        const at = atHand.rows.find(({ around }) => around.sculpture.thing === body.sculpture);
        return <Notice key={thing} kind="stop" title={words.hot(at?.name ?? '', number(body.clearZone))} />;
      })}
      <Section title={words.works}>
        <ol className="stack tight">
          {rows.map((row) => (
            <li key={row.around.sculpture.thing}>
              <WorkLine row={row} on={on} sheet={sheetOf(row)} />
            </li>
          ))}
        </ol>
      </Section>
      <div className="briefing-columns">
        <Section title={words.stop}>
          <ul>
            {stopRules.map(({ id, text }) => (
              <li key={id}>{text}</li>
            ))}
          </ul>
          <p className="strong">{words.stopWho}</p>
        </Section>
        <Section title={words.contacts}>
          {helpers && <p>{helpers}</p>}
          {contacts ? (
            <p className="briefing-contacts strong">{contacts}</p>
          ) : (
            <p className="soft">{words.contactsNone}</p>
          )}
        </Section>
        <Section title={words.forbidden}>
          <p>{everywhere.map(methodName).join('; ')}.</p>
          {own.length > 0 && (
            <ul>
              {own.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          )}
        </Section>
        <Section title={words.safety}>
          <ul>
            {[...cautions.values()].map(({ id, text }) => (
              <li key={id}>{text}</li>
            ))}
          </ul>
        </Section>
      </div>
      <PrintRow />
      <RecordState />
    </>
  );
}

interface WorkLineProps {
  readonly row: YearRow;
  readonly on: DayChosen;
  readonly sheet: Thing<'accessSheet'> | undefined;
}

/** Zones the last round saw a stop word on: whoever helps leaves them alone, whatever the day is for. */
const leftAlone = ({ facts }: YearRow): readonly string[] =>
  (facts?.need?.classes.zones ?? []).flatMap(({ about, stopWords }) => {
    const zone = facts?.zones.find((one) => one.zone.thing === about)?.zone;
    if (!zone || stopWords.length === 0) return [];
    return [words.leftAlone(zone.body.letter, stopWords.map((kind) => kindOf(kind)?.name ?? kind).join(', '))];
  });

function WorkLine({ row, on, sheet }: WorkLineProps) {
  const { around, name, row: plan } = row;
  const waxed = (plan?.waxes ?? 0) > 0;
  const doing = [
    plan?.survey === 'full' ? words.doing.survey : plan?.survey === 'look' ? words.doing.look : undefined,
    waxed && on.wash ? words.doing.wash : undefined,
    waxed && on.wax ? words.doing.wax : undefined,
    plan?.lift ? words.doing.lift : undefined,
  ].filter((one) => one !== undefined);
  const { closures, water, power } = sheet?.body ?? {};
  const site = [closures && words.closed(closures), water && words.water(water), power && words.power(power)];
  return (
    <>
      <span className="strong">{name}</span>: {doing.join(', ') || words.notLooked}.
      {[...around.dangers.map(({ body }) => words.danger(body.what)), ...leftAlone(row)].map((line) => (
        <span key={line} className="strong">
          {' '}
          {line}
        </span>
      ))}
      {around.access && <span className="soft"> {around.access}</span>}
      {site.filter(Boolean).length > 0 && <span className="soft"> {site.filter(Boolean).join(' · ')}</span>}
      {around.inserts.length > 0 && (
        <span>
          {' '}
          {words.inserts(
            around.inserts
              .map(({ body }) => (body.count > 1 ? `${body.count} × ${body.material}` : body.material))
              .join(', '),
          )}
          .
        </span>
      )}
    </>
  );
}
