import {
  type Air,
  attackOver,
  type CorrosionRate,
  categoryRows,
  corrosionRates,
  depositionClass,
} from '../../engine/site';
import { number, w } from '../../words';
import { Section } from '../parts';
import { LineChart } from '../parts/charts';
import { Reasons } from '../parts/Reasons';

const words = w.place;
const wordOf = (category: string | null): string => {
  const row = categoryRows.find(({ id }) => id === category);
  return row ? words.categoryWord(row.id, row.word) : words.noCategory;
};
/** Three figures that count. */
const three = (value: number): string => number(value, value < 1 ? 3 : value < 10 ? 2 : value < 100 ? 1 : 0);
const range = ({ low, high }: { readonly low: number; readonly high: number }): string =>
  `${three(low)} ${w.charts.lastTo} ${three(high)}`;
const years = [1, 5, 10, 20, 50];

/** Rates and categories of three metals, and how the attack on copper grows. */
export function AirOutcome({ air }: { readonly air: Air }) {
  const rates = corrosionRates(air);
  const [copper] = rates;
  const reasons = [
    ...new Map(rates.flatMap((row) => row.rate.reasons).map((reason) => [JSON.stringify(reason), reason])).values(),
  ];
  return (
    <>
      <Section title={words.result}>
        <p className="strong">
          {copper?.category
            ? words.headline(copper.category, categoryRows.find(({ id }) => id === copper.category)?.word ?? '')
            : words.headlineOver}
        </p>
        <table className="plain-table cards">
          <thead>
            <tr>
              <th scope="col">{words.metal}</th>
              <th scope="col">{words.rate}</th>
              <th scope="col">{words.mass}</th>
              <th scope="col">{words.category}</th>
            </tr>
          </thead>
          <tbody>
            {rates.map((row) => (
              <RateRow key={row.metal} row={row} />
            ))}
          </tbody>
        </table>
        <p className="soft">
          {words.classes(
            depositionClass('so2', air.so2) ?? words.beyondClasses,
            depositionClass('chloride', air.chloride) ?? words.beyondClasses,
          )}
        </p>
        <Reasons reasons={reasons.filter(({ code }) => code !== 'site: clean coupons')} />
      </Section>
      {copper && <Growth copper={copper} />}
    </>
  );
}

function RateRow({ row }: { readonly row: CorrosionRate }) {
  const { metal, rate, mass, category, categoryByMass } = row;
  return (
    <tr>
      <th scope="row">
        {words.metals[metal]} <span className="soft">({words.metalFor[metal]})</span>
      </th>
      <td data-head={words.rate}>
        {three(rate.value)} <span className="soft">({range(rate)})</span>
      </td>
      <td data-head={words.mass}>{three(mass)}</td>
      <td data-head={words.category}>
        {wordOf(category)}
        {category !== categoryByMass && (
          <span className="soft"> ({words.byMass(categoryByMass ?? words.noCategory)})</span>
        )}
      </td>
    </tr>
  );
}

function Growth({ copper }: { readonly copper: CorrosionRate }) {
  const line = Array.from({ length: 50 }, (_, i) => ({ x: i + 1, ...attackOver(copper, i + 1) }));
  return (
    <Section title={words.years} lead={words.yearsWhat}>
      <LineChart
        title={words.years}
        titleUnseen
        label={words.yearsLabel}
        line={[{ x: 0, value: 0, low: 0, high: 0 }, ...line]}
        xName={words.yearsAxis}
        xText={(value) => number(value)}
        yText={(value) => number(value)}
        table={
          <table className="plain-table">
            <caption className="unseen">{words.years}</caption>
            <thead>
              <tr>
                <th scope="col">{words.year}</th>
                <th scope="col">{words.depth}</th>
                <th scope="col">{words.range}</th>
              </tr>
            </thead>
            <tbody>
              {years.map((year) => {
                const figure = attackOver(copper, year);
                return (
                  <tr key={year}>
                    <th scope="row">{year}</th>
                    <td>{three(figure.value)}</td>
                    <td>{range(figure)}</td>
                  </tr>
                );
              })}
            </tbody>
          </table>
        }
      />
      <Reasons reasons={attackOver(copper, 50).reasons} />
    </Section>
  );
}
