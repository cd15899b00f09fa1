import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { HoldBars, LifeCurve, LineChart, reach, SeriesChart, SignedBars } from '../../../src/screens/parts/charts';
import { axeFaults } from '../axe';

const point = (year: number, value: number, span: number | null = 0) => ({
  day: `${year}-05-12`,
  value,
  low: value - 2,
  high: value + 2,
  span,
});
const years = [90, 88, 86, 84].map((value, i) => point(2021 + i, value));
const noNaN = () => expect(document.body.innerHTML).not.toMatch(/NaN|Infinity|undefined/);
const openNumbers = async () => userEvent.setup().click(screen.getByRole('button', { name: 'Show the numbers' }));

describe('A series drawn', () => {
  it('is told to ears, has a table of its numbers, and names what broke it', async () => {
    render(
      <SeriesChart
        title="Condition index"
        unit="index"
        points={[...years.slice(0, 2), { ...point(2023, 97, 1), open: true }, point(2024, 96, 1)]}
        breaks={[{ day: '2022-09-04', what: 'Stripped to the metal' }]}
        marks={[{ day: '2024-05-12', what: 'another surveyor: Helper' }]}
        ticks={['2021-05-20']}
        forecast={{ day: '2025-05-12', value: 95, low: 90, high: 98 }}
        level={{ value: 75, what: 'action level 75' }}
      />,
    );
    expect(screen.getByRole('img', { name: 'Condition index: 4 rounds, from 90 to 96.' })).toBeDefined();
    expect(screen.getAllByRole('listitem').map((row) => row.textContent)).toEqual([
      '4 September 2022: Stripped to the metal',
      '12 May 2024: another surveyor: Helper',
    ]);
    await openNumbers();
    const rows = within(screen.getByRole('table')).getAllByRole('row');
    expect(rows).toHaveLength(6);
    expect(rows[3]?.textContent).toContain('not all of the surface was seen');
    expect(rows[5]?.textContent).toContain('95');
    noNaN();
    expect(await axeFaults()).toEqual([]);
  });

  it('does not join what a break has parted', () => {
    const { container } = render(
      <SeriesChart
        title="x"
        unit="m2"
        points={[point(2021, 3), point(2022, 4), point(2023, 1, 1), point(2024, 2, 1)]}
      />,
    );
    const lines = [...container.querySelectorAll('path.series-line')].map((path) => path.getAttribute('d') ?? '');
    expect(lines).toHaveLength(2);
    expect(lines.every((d) => (d.match(/L/g) ?? []).length === 1)).toBe(true);
  });

  it('puts no number of a mark on another, however close the days are', () => {
    const days = Array.from({ length: 9 }, (_, i) => `2022-0${i + 1}-01`);
    const { container } = render(
      <SeriesChart title="x" unit="index" points={years} marks={days.map((day) => ({ day, what: day }))} />,
    );
    const at = [...container.querySelectorAll('.chart-number circle')].map((circle) => ({
      x: Number(circle.getAttribute('cx')),
      y: Number(circle.getAttribute('cy')),
    }));
    expect(at).toHaveLength(9);
    const near = at.flatMap((a, i) => at.slice(i + 1).map((b) => Math.hypot(a.x - b.x, a.y - b.y)));
    expect(Math.min(...near)).toBeGreaterThan(20);
    const tops = [...container.querySelectorAll('circle.series-point')].map((c) => Number(c.getAttribute('cy')));
    expect(Math.max(...at.map(({ y }) => y))).toBeLessThan(Math.min(...tops));
  });

  it('draws two rounds and two coatings of one day, each once', () => {
    const { container } = render(
      <SeriesChart
        title="x"
        unit="index"
        points={[point(2021, 90), point(2022, 80), point(2022, 82)]}
        ticks={['2021-06-01', '2021-06-01']}
      />,
    );
    expect(container.querySelectorAll('circle.series-point')).toHaveLength(3);
    expect(container.querySelectorAll('svg[role=img] path.coat-tick')).toHaveLength(2);
  });

  it.each([
    ['nothing', []],
    ['one round', [point(2021, 90)]],
    ['rounds that are in no series', [point(2021, 90, null), point(2022, 80, null)]],
    ['the same figure throughout', [point(2021, 0), point(2022, 0)].map((p) => ({ ...p, low: 0, high: 0 }))],
    ['forty rounds', Array.from({ length: 40 }, (_, i) => point(1985 + i, 50 + i))],
  ])('draws %s without a NaN', (_, points) => {
    render(<SeriesChart title="x" unit="m2" points={points} />);
    if (points.length === 0) expect(screen.getByText('There is nothing to draw yet.')).toBeDefined();
    noNaN();
  });
});

describe('Holds drawn', () => {
  const rows = [
    { coated: '2021-05-20', lower: 0, upper: 11.7, clean: 'assumed' as const, inPassing: false },
    {
      coated: '2023-05-25',
      lower: 1.8,
      upper: 3.7,
      clean: 'verified' as const,
      inPassing: true,
      after: 'Cause removed, 3 April 2023',
    },
    { coated: '2024-05-23', lower: 5, upper: null, clean: 'assumed' as const, inPassing: false, remark: 'still clear' },
    { coated: '2025-05-22', none: 'no clean start' },
  ];

  it('are stretches and never points, and the table says each in words', async () => {
    const { container } = render(<HoldBars title="Months" rows={rows} />);
    expect(container.querySelectorAll('rect.hold-bar')).toHaveLength(2);
    expect(container.querySelectorAll('svg[role=img] path.hold-open')).toHaveLength(1);
    await openNumbers();
    const told = within(screen.getByRole('table'))
      .getAllByRole('row')
      .map((row) => row.textContent);
    expect(told[1]).toContain('between 0 and 11.7 months');
    expect(told[2]).toContain('Cause removed, 3 April 2023; seen clear at the start; noticed in passing');
    expect(told[3]).toContain('over 5 months');
    expect(told[4]).toContain('no clean start');
    noNaN();
    expect(await axeFaults()).toEqual([]);
  });

  it('noticed in passing, and still open, are told in the legend only where there is such a bar', () => {
    const { container } = render(<HoldBars title="Months" rows={rows} />);
    expect(container.querySelectorAll('svg[role=img] path.hold-passing')).toHaveLength(1);
    expect(container.querySelector('.chart-legend')?.textContent).toContain('noticed in passing');
    const own = render(<HoldBars title="Other" rows={rows.slice(0, 1)} />).container;
    expect(own.querySelector('.chart-legend')?.textContent).not.toMatch(/noticed in passing|not seen back/);
    const under = render(<HoldBars title="Third" rows={rows} legendFor={[]} />).container;
    expect(under.querySelector('.chart-legend')).toBeNull();
  });

  it('of several zones are drawn to one measure', () => {
    const short = rows.slice(1, 2);
    const wide = (most?: number) =>
      Number(
        render(<HoldBars title="x" rows={short} {...(most ? { most } : {})} />)
          .container.querySelector('rect.hold-bar')
          ?.getAttribute('width'),
      );
    expect(wide(reach(rows))).toBeLessThan(wide() / 2);
  });

  it('none at all is a sentence; forty fit', () => {
    render(<HoldBars title="Months" rows={[]} />);
    expect(screen.getByText('There is nothing to draw yet.')).toBeDefined();
    const many = Array.from({ length: 40 }, (_, i) => ({
      coated: `${1985 + i}-05-20`,
      lower: 0,
      upper: 0.1,
      clean: 'assumed' as const,
      inPassing: false,
    }));
    render(<HoldBars title="Many" rows={many} />);
    noNaN();
  });
});

describe('A curve of lives drawn', () => {
  it('says its median to ears and has where the mass lies behind it', async () => {
    render(
      <LifeCurve
        title="Up, open"
        steps={[
          { from: 0, to: 4, low: 1, high: 1 },
          { from: 4, to: 6, low: 0.4, high: 1 },
          { from: 6, to: null, low: 0.4, high: 0.4 },
        ]}
        masses={[
          { left: 4, right: 6, mass: 0.6 },
          { left: 6, right: null, mass: 0.4 },
        ]}
        fit={[0, 3, 6].map((months) => ({
          months,
          value: 1 - months / 10,
          low: 0.9 - months / 10,
          high: 1 - months / 20,
        }))}
        median={5.2}
      />,
    );
    expect(screen.getByRole('img', { name: 'Up, open: half back by 5.2 months.' })).toBeDefined();
    await openNumbers();
    expect(
      within(screen.getByRole('table'))
        .getAllByRole('row')
        .map((row) => row.textContent),
    ).toEqual(['Between (months)Share that came back', '4 to 660 %', 'after the last look40 %']);
    noNaN();
  });
});

describe('Bars and lines', () => {
  it('say each number in words, with or without the bar', () => {
    render(
      <SignedBars
        bars={[
          { key: 'a', name: 'zone A', value: 0.4, text: 'grew by 0.40 m²' },
          { key: 'b', name: 'zone B', value: -0.1, text: 'shrank by 0.10 m²' },
        ]}
      />,
    );
    expect(screen.getAllByRole('listitem').map((row) => row.textContent)).toEqual([
      'zone Agrew by 0.40 m²',
      'zone Bshrank by 0.10 m²',
    ]);
    noNaN();
  });

  it('all of nothing draw no NaN', () => {
    render(<SignedBars bars={[{ key: 'a', name: 'zone A', value: 0, text: 'no change' }]} />);
    render(
      <LineChart
        title="x"
        label="x"
        line={[]}
        points={[{ x: 0, y: 0 }]}
        xName="x"
        xText={String}
        yText={String}
        table={null}
      />,
    );
    noNaN();
  });
});
