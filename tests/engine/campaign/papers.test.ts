import { describe, expect, it } from 'vitest';
import { paperEntered, paperStanding } from '../../../src/engine/campaign';
import { type BodyOf, nameOf } from '../../../src/engine/record';
import { type PaperOf, paperItems } from '../../../src/engine/trade';
import { codes } from '../change/invented';
import { campaignName, sculpture, thing } from './drawnUp';

const ofs: readonly PaperOf[] = ['request', 'proposal', 'report'];
type Items = BodyOf<'completeness'>['items'];
const paper = (of: PaperOf, items: Items, more: Partial<BodyOf<'completeness'>> = {}): BodyOf<'completeness'> => ({
  sculpture,
  campaign: campaignName,
  of,
  items,
  date: '2026-10-01',
  ...more,
});
const all = (of: PaperOf, state: Items[number]['state']): Items => paperItems[of].map(({ id }) => ({ id, state }));

describe('What a paper must hold', () => {
  it.each(ofs)('is a list of the %s without a double, each line with its source', (of) => {
    const ids = paperItems[of].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(paperItems[of].every(({ name, source }) => name !== '' && source.text !== '')).toBe(true);
  });

  it.each(ofs)('of a %s nobody has looked at is all open, never whole', (of) => {
    const standing = paperStanding(of, undefined);
    expect(standing.whole).toBe(false);
    expect(standing.unseen).toBe(paperItems[of].length);
    expect(codes(standing.reasons)).toEqual(['campaign: paper not looked through']);
  });

  it.each(ofs)('is whole once every line of the %s is there or was not asked', (of) => {
    const items = all(of, 'there').map((item, i) => (i === 0 ? { ...item, state: 'not asked' as const } : item));
    expect(paperStanding(of, paper(of, items))).toMatchObject({ whole: true, missing: [], unseen: 0 });
    expect(paperStanding(of, paper(of, items.slice(1)))).toMatchObject({ whole: false, unseen: 1 });
  });

  it('keeps the last payment waiting while the report lacks something', () => {
    const items = all('report', 'there').map((item) =>
      item.id === 'layers' ? { ...item, state: 'missing' as const } : item,
    );
    const standing = paperStanding('report', paper('report', items));
    expect(standing.missing.map(({ id }) => id)).toEqual(['layers']);
    expect(codes(standing.reasons)).toEqual(['campaign: paper lacks', 'campaign: last payment waits']);
    expect(codes(paperStanding('report', paper('report', all('report', 'there'))).reasons)).toEqual([
      'campaign: paper whole',
    ]);
  });

  it('leaves a line of a newer version alone', () => {
    const items: Items = [...all('request', 'there'), { id: 'what nobody knows yet', state: 'missing' }];
    expect(paperStanding('request', paper('request', items)).whole).toBe(true);
  });

  it('is that of the bidder who is asked about, the latest first', () => {
    const of = (id: string, date: string, bid: string) =>
      thing<'completeness'>(`completeness/c/proposal/${id}`, paper('proposal', [], { date, bid: nameOf.bid(bid) }));
    const papers = [of('1', '2026-04-02', 'x'), of('2', '2026-04-01', 'x'), of('3', '2026-05-01', 'y')];
    expect(paperEntered(papers, campaignName, 'proposal', nameOf.bid('x'))?.body.date).toBe('2026-04-02');
    expect(paperEntered(papers, campaignName, 'proposal')?.body.date).toBe('2026-05-01');
    expect(paperEntered(papers, nameOf.campaign('other'), 'proposal')).toBeUndefined();
  });
});
