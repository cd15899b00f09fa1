import type { DemoTreatment } from './work';

const dayOf: Readonly<Record<number, string>> = {
  2021: '2021-05-20',
  2022: '2022-05-19',
  2023: '2023-05-25',
  2024: '2024-05-23',
  2025: '2025-05-22',
  2026: '2026-05-21',
};

/** The Helper comes in the summers from 2023. */
const people = (year: number, perM2: number): NonNullable<DemoTreatment['people']> =>
  (year < 2023 ? ['Steward'] : ['Steward', 'Helper']).map((role) => ({ role, hoursPerM2: perM2 }));

/** Grams of wax on a square metre in one coat: more in the first years than since. */
const gramsPerCoat: Readonly<Record<number, number>> = { 2021: 7.5, 2022: 7, 2023: 6.5 };

/** The garden's yearly wash and two coats of cold wax, in the years given, with the tin of the year. */
export const washAndWax = (years: readonly number[]): DemoTreatment[] =>
  years.flatMap((year): DemoTreatment[] => {
    const date = dayOf[year] ?? `${year}-05`;
    const batch = `W-${year % 100}A`;
    return [
      { type: 'wash', date, people: people(year, 0.2) },
      {
        type: 'wax',
        date,
        product: 'Cold paste wax',
        batch,
        stock: `tin ${batch}`,
        gramsPerCoat: gramsPerCoat[year] ?? 6,
        coats: 2,
        people: people(year, 0.35),
      },
    ];
  });
