import { describe, expect, it } from 'vitest';
import { zonesAt } from '../../../src/engine/record';
import { ladder, origins, severities } from '../../../src/engine/trade';
import { zoneCards } from '../../../src/papers/cards/zoneCards';
import { type PaperNode, type PaperPiece, textOf } from '../../../src/papers/layout';
import { gardenSurvey, sourceOf } from '../../files/gardenSource';

const garden = sourceOf(gardenSurvey());
const stair = garden.works.find(({ record }) => record.sculpture.body.number === 'SW-02')!;
const about = stair.record.sculpture.thing;

const all = (piece: PaperPiece, is: (node: PaperNode) => boolean): PaperNode[] => {
  if (piece === undefined || piece === false || typeof piece === 'string' || typeof piece === 'number') return [];
  if (Array.isArray(piece)) return piece.flatMap((one) => all(one, is));
  if ('picture' in piece) return [];
  const node = piece as PaperNode;
  return [...(is(node) ? [node] : []), ...node.in.flatMap((one) => all(one, is))];
};
const cards = (body: PaperPiece) => all(body, ({ at }) => at.class === 'zone-card');
const body = zoneCards.make(garden, about)!.body;

const ofKind = ({ at }: PaperNode) => at.class === 'card-kind';

describe('Pencil cards', () => {
  it('are one a zone, in the order in which the zones are walked and entered', () => {
    const letters = cards(body).map((card) => textOf(card).trim().slice(0, 1));
    expect(letters).toEqual(zonesAt(stair.record, garden.today).map((zone) => zone.body.letter));
    expect(letters.length).toBe(9);
  });

  it('offer every answer of the pad for the whole zone, and every reason not to have looked', () => {
    for (const card of cards(body)) {
      const text = textOf(card);
      for (const word of [
        'Nothing found',
        'As last year',
        'could not reach it',
        'nest in use',
        'flattened drops',
        'Initials',
      ])
        expect(text).toContain(word);
    }
  });

  it('show kinds seen before, with where they come from, and never how much of them there was', () => {
    const h = cards(body).find((card) => textOf(card).startsWith('H'))!;
    const rows = all(h, ({ tag, in: cells }) => tag === 'tr' && all(cells, ofKind).length > 0);
    expect(textOf(rows)).toMatch(/green/i);
    expect(textOf(rows)).not.toMatch(/\d\s?%|75/);
    expect(all(rows, ({ at }) => at.class === 'card-known').length).toBeGreaterThan(0);
    expect(rows.length).toBeGreaterThanOrEqual(3);
    for (const row of rows)
      expect(all(row, ({ tag }) => tag === 'td').length).toBeGreaterThanOrEqual(origins.length + severities.length + 2);
  });

  it('have two blank rows at least, for what was not there before', () => {
    for (const card of cards(body)) {
      const names = all(card, ({ tag, at }) => /^t[dh]$/.test(tag) && at.class === 'card-kind' && at.scope !== 'col');
      expect(names.filter((name) => textOf(name).trim() === '').length).toBeGreaterThanOrEqual(2);
    }
  });

  it('stand under one head a sheet, five small ones at most, none left out', () => {
    const zones = Array.from({ length: 40 }, (_, i) => stair.record.zones[i % stair.record.zones.length]!);
    const many = { ...garden, works: [{ ...stair, record: { ...stair.record, zones } }] };
    const sheets = all(zoneCards.make(many, about)!.body, ({ at }) => at.class === 'card-sheet');
    for (const sheet of sheets) {
      expect(all(sheet, ({ tag }) => tag === 'thead')).toHaveLength(1);
      expect(cards(sheet).length).toBeGreaterThan(0);
      expect(cards(sheet).length).toBeLessThanOrEqual(5);
    }
    expect(cards(sheets)).toHaveLength(40);
    expect(sheets.length).toBeLessThanOrEqual(10);
  });

  it('draw patches that cover just what stands under them', () => {
    const patches = all(body, ({ at }) => at.class === 'card-patch');
    expect(patches.length).toBeGreaterThanOrEqual(ladder.length - 1);
    for (const { label, value } of ladder)
      if (value > 0) expect(patches.some((p) => p.at['aria-label'] === `Patch of ${label} %`)).toBe(true);
  });

  it('are not offered for a work without zones', () => {
    const bare = { ...garden, works: [{ ...stair, record: { ...stair.record, zones: [] } }] };
    expect(zoneCards.choices(bare)).toEqual([]);
    expect(zoneCards.make(bare, about)).toBeUndefined();
  });
});
