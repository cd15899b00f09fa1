import { useState } from 'react';
import { isInYear, seasonOf, seasonsOf } from '../../engine/care';
import { date, list, money, number, w, workName } from '../../words';
import { EmptyState, LinkButton, Page, Reading, Section } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { Select } from '../parts/Select';
import { pathTo, useDesk } from '../shell';
import { NotHere } from '../shell/NotHere';
import { type CareOf, readingsOf, useCareOf } from './careOfWork';
import { ReadingsTable } from './ReadingsTable';
import { SeasonTable } from './SeasonTable';
import '../parts/lines.css';
import './careDay.css';

const words = w.careDay.season;

/** One page of what was done to a work in a year, to print and to hand over. */
export function SeasonScreen({ sculpture }: { readonly sculpture: string }) {
  const care = useCareOf(sculpture);
  if (care === undefined) return <Reading />;
  if (care === null) return <NotHere />;
  return <SeasonOf care={care} />;
}

function SeasonOf({ care: { record, planned, products } }: { readonly care: CareOf }) {
  const thisYear = Number(useDesk().today().slice(0, 4));
  const years = seasonsOf(record, thisYear);
  const [year, setYear] = useState(
    () => years.find((each) => seasonOf(record, each).treatments.length > 0) ?? thisYear,
  );
  const { thing: sculpture, body } = record.sculpture;
  const season = seasonOf(record, year);
  const readings = readingsOf(planned.weather.filter((each) => isInYear(each.body.date, year)));
  const looks = record.looks.filter((look) => isInYear(look.body.date, year));
  const rounds = record.rounds.filter((round) => isInYear(round.body.date, year));
  const count = (result: 'clear' | 'green' | 'unsure') => looks.filter((look) => look.body.result === result).length;
  const against = readings.filter((each) => each.body.overridden).length;
  const nothing = season.treatments.length + readings.length + looks.length + rounds.length === 0;
  return (
    <Page
      title={`${words.title} ${year}`}
      over={workName({ body })}
      lead={words.lead}
      back={{ to: pathTo.planOfWork(sculpture), label: w.plan.ofWork.title }}
    >
      <div className="not-printed">
        <Select
          label={words.year}
          value={String(year)}
          onChange={(chosen) => setYear(Number(chosen))}
          options={years.map((each) => ({ value: String(each), label: String(each) }))}
        />
      </div>
      {nothing && (
        <EmptyState
          title={words.none}
          actions={<LinkButton to={pathTo.logbook(sculpture)}>{w.plan.ofWork.logbook}</LinkButton>}
        />
      )}
      {season.treatments.length > 0 && (
        <Section title={words.done}>
          <SeasonTable record={record} treatments={season.treatments} readings={planned.weather} />
        </Section>
      )}
      {season.hours.length + season.costs.length + season.products.length > 0 && (
        <Section title={words.sums}>
          <ul>
            {season.hours.map(({ role, hours, unknown }) => (
              <li key={role}>{words.hours(role, number(hours, 2), unknown)}</li>
            ))}
            {season.products.map(({ product, batch, stock, uses, used }) => (
              <li key={`${product} ${batch} ${stock}`}>
                {words.productUses(product, batch, uses, amountIn(products, stock, used))}
              </li>
            ))}
            {season.costs.map((cost) => (
              <li key={cost.currency}>
                {words.cost}: {money(cost)}
              </li>
            ))}
          </ul>
        </Section>
      )}
      {season.notReached.length > 0 && (
        <Section title={words.notReached}>
          <ul>
            {season.notReached.map(({ date: day, text }) => (
              <li key={`${day} ${text}`}>
                {date(day)}: {text}
              </li>
            ))}
          </ul>
        </Section>
      )}
      {(looks.length > 0 || rounds.length > 0 || readings.length > 0) && (
        <Section title={words.also}>
          <ul>
            {rounds.length > 0 && <li>{words.rounds(list(rounds.map((round) => date(round.body.date))))}</li>}
            {looks.length > 0 && <li>{words.looks(count('clear'), count('green'), count('unsure'))}</li>}
            {against > 0 && <li>{words.overridden(against)}</li>}
          </ul>
          {readings.length > 0 && <ReadingsTable title={words.readings(readings.length)} readings={readings} withDay />}
        </Section>
      )}
      <p className="only-printed signed-line">{words.signed}</p>
      <PrintRow />
    </Page>
  );
}

/** How much of a tin, in its own unit; nothing where nobody wrote it down. */
const amountIn = (products: CareOf['products'], stock: string | undefined, used: number): string => {
  const unit = products.find(({ thing }) => thing === stock)?.body.unit;
  return used > 0 && unit ? `${number(used, 2)} ${w.products.units[unit]}` : '';
};
