import type { DemoTreatment } from './work';

const dayOf: Readonly<Record<number, string>> = {
  2021: '2021-05-20',
  2022: '2022-05-19',
  2023: '2023-05-25',
  2024: '2024-05-23',
  2025: '2025-05-22',
  2026: '2026-05-21',
};

/** The garden's yearly wash and two coats of cold wax, in the years given. */
export const washAndWax = (years: readonly number[]): DemoTreatment[] =>
  years.flatMap((year) => {
    const date = dayOf[year] ?? `${year}-05`;
    return [
      { type: 'wash', date, by: 'Steward and Helper' },
      { type: 'wax', date, product: `cold paste wax, batch W-${year % 100}A`, coats: 2, by: 'Steward and Helper' },
    ];
  });
