/** L*, a*, b*. */
type Lab = readonly [number, number, number];

const lent = { illuminant: 'D65', observer: '10', geometry: 'd/8 included', aperture: 8 } as const;
const conservators = { illuminant: 'D65', observer: '10', geometry: '45/0', aperture: 4 } as const;

/** SW-03, table top: agreed at the end of the work of 2023, read each May since with a lent instrument, once with another. Made up. */
export const tableTop = {
  work: 'SW-03',
  zone: 'A',
  position: 'Under the printed frame, its corner on the seam between the two plates',
  agreed: { date: '2023-09-21', name: 'Panel 3 of the sample board', value: [28.4, 7.9, 9.6] as Lab, conditions: lent },
  readings: [
    {
      date: '2024-05-14',
      values: [
        [28.1, 7.7, 9.4],
        [28.6, 7.8, 9.9],
        [27.9, 7.6, 9.2],
      ] as readonly Lab[],
      conditions: lent,
    },
    {
      date: '2025-05-13',
      values: [
        [27.6, 7.2, 9.0],
        [28.3, 7.1, 9.3],
        [27.5, 7.4, 8.7],
      ] as readonly Lab[],
      conditions: lent,
    },
    {
      date: '2025-11-18',
      values: [
        [26.1, 7.0, 8.1],
        [26.4, 7.1, 8.3],
      ] as readonly Lab[],
      conditions: conservators,
    },
    {
      date: '2026-05-12',
      values: [
        [27.2, 6.3, 8.9],
        [27.9, 6.6, 9.2],
        [26.8, 6.0, 8.5],
      ] as readonly Lab[],
      conditions: lent,
    },
  ],
} as const;
