import { describe, expect, it } from 'vitest';
import type { PaperSource } from '../../../src/engine/reckoning';
import { type Current, nameOf } from '../../../src/engine/record';
import { yearPage } from '../../../src/papers/collection/yearPage';
import { type PaperNode, type PaperPiece, textOf } from '../../../src/papers/layout';
import { entry } from '../../files/entries';
import { gardenSurvey, sourceOf } from '../../files/gardenSource';

const garden = sourceOf(gardenSurvey());
const make = (year = '2026', source: PaperSource = garden) => yearPage.make(source, year)!;
const text = (year?: string, source?: PaperSource) => textOf(make(year, source).body);
const all = (piece: PaperPiece, is: (node: PaperNode) => boolean): PaperNode[] => {
  if (piece === undefined || piece === false || typeof piece === 'string' || typeof piece === 'number') return [];
  if (Array.isArray(piece)) return piece.flatMap((one) => all(one, is));
  if ('picture' in piece) return [];
  const node = piece as PaperNode;
  return [...(is(node) ? [node] : []), ...node.in.flatMap((one) => all(one, is))];
};
const under = (title: string) => (node: PaperNode) => node.at.class === 'under' && textOf(node).startsWith(title);

describe('The year on one page', () => {
  it('is offered for every year in which a round was walked, the latest first', () => {
    expect(yearPage.choices(garden).map(({ about }) => about)).toEqual([
      '2026',
      '2025',
      '2024',
      '2023',
      '2022',
      '2021',
    ]);
    expect(yearPage.make(garden, '2019')).toBeUndefined();
    expect(yearPage.make(garden, garden.collection)).toBeUndefined();
  });

  it('says first what nobody looked at', () => {
    const said = text('2025');
    expect(said.indexOf('Not looked at')).toBe(0);
    expect(said).toContain('SW-04 Geese, Wind Dropping: zone B not looked at.');
  });

  it('tells the state of each work by a shape and in words, with its index and the one before', () => {
    const rows = all(make().body, ({ tag, at }) => tag === 'tr' && at.class !== 'sum').slice(1);
    expect(rows.length).toBe(6);
    for (const row of rows)
      expect(textOf(row)).toMatch(/(?:in the long run|next years|soon|at once).*\d+ \(\d+ to \d+\)/);
    const [map] = all(make().body, ({ at }) => at.class === 'drawing');
    expect(String(map?.at['aria-label'])).toContain('SW-02 Half-Tide Stair:');
    expect(all(map, ({ tag }) => tag === 'text').map((label) => textOf(label))).toContain('SW-06');
  });

  it('tells three changes at most one can be sure of, and three one cannot, with what would be sure', () => {
    const [sure] = all(make().body, under('Changes one can be sure of'));
    const [unsure] = all(make().body, under('Changes one cannot be sure of'));
    const lines = (piece: PaperNode | undefined) => all(piece, ({ tag }) => tag === 'li').map((line) => textOf(line));
    expect(lines(sure).length).toBeGreaterThan(0);
    expect(lines(sure).length).toBeLessThanOrEqual(3);
    for (const line of lines(sure)) expect(line).toMatch(/: (?:clearly )?(?:worse|better)\./);
    expect(lines(unsure).length).toBe(3);
    for (const line of lines(unsure)) expect(line).toMatch(/sure only above|may be chance/);
    expect(lines(sure).some((line) => /SW-02 as a whole: green not at rest from .* since 2021/.test(line))).toBe(true);
  });

  it('wants three decisions at most, hers instead of the drafted ones once she writes', () => {
    const drafted = make()
      .own.find(({ part }) => part === 'wanted')!
      .drafted!.split('\n');
    expect(drafted.length).toBeLessThanOrEqual(3);
    expect(drafted.join(' ')).toContain('Wax, mend or strip the stair');
    const name = nameOf.paperText('year-page', 'wanted', '2026');
    const body = {
      paper: 'year-page',
      year: 2026,
      part: 'wanted',
      text: 'A lift.\n\nA second helper.\nPaint.\nMore.',
      date: '2026-10-01',
    };
    const lead = entry(900, { thing: name, kind: 'paperText', within: garden.collection, body });
    const one: Current = {
      ...{ thing: name, kind: 'paperText', within: garden.collection, lead },
      ...{ line: 1, heads: [lead.id], gone: false },
    };
    const [wanted] = all(make('2026', { ...garden, around: [...garden.around, one] }).body, under('Decisions wanted'));
    expect(all(wanted, ({ tag }) => tag === 'li').map((line) => textOf(line).trim())).toEqual([
      'A lift.',
      'A second helper.',
      'Paint.',
    ]);
  });

  it('tells of the money only what the record says, and that the next year is not planned', () => {
    const said = text();
    expect(said).toMatch(/Lift in 2026 demo \$ 840/);
    expect(said).toContain('Nothing is planned for 2027 yet.');
  });

  it('of a year gone by knows nothing that came later', () => {
    const of2022 = make('2022');
    const rows = all(of2022.body, ({ tag, at }) => tag === 'tr' && at.class !== 'sum').slice(1);
    expect(rows.map((row) => textOf(row)).join(' ')).not.toEqual(
      all(make().body, ({ tag, at }) => tag === 'tr' && at.class !== 'sum')
        .slice(1)
        .map((row) => textOf(row))
        .join(' '),
    );
    expect(textOf(of2022.body)).not.toMatch(/since 202[2-6]/);
  });
});
