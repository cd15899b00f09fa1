import { describe, expect, it } from 'vitest';
import {
  approvalRefused,
  bidRefused,
  campaignRefused,
  causeRefused,
  colourCardRefused,
  completenessRefused,
  quantitiesRefused,
} from '../../../src/engine/campaign';
import type { BodyOf } from '../../../src/engine/record';
import { bid, campaignName, cause, sculpture, zone } from './drawnUp';

const campaign = { sculpture, title: 'The stair', opened: '2026-03-02', step: 'money' };
const quantities = (items: BodyOf<'quantities'>['items']) => ({
  sculpture,
  campaign: campaignName,
  date: '2026-03-03',
  items,
});
const line = { id: 'i1', name: 'A', task: 'clean down', unit: 'm2' as const, amount: 2 };
const approval = { sculpture, of: 'sample area' as const, date: '2026-06-01', words: 'seen', signed: [] };
const card = { sculpture, zones: [zone('A')], date: '2026-06-01', words: 'brown', signed: [] };

describe('What is not kept as it was entered', () => {
  it('is a campaign that ended before it began, and one whose warranty ended before it was accepted', () => {
    expect(campaignRefused({ ...campaign, began: '2026-06-01', ended: '2026-05-01' })).toEqual({
      code: 'campaign: days out of order',
      params: { earlier: 'began', later: 'ended', first: '2026-06-01', last: '2026-05-01' },
    });
    expect(campaignRefused({ ...campaign, accepted: '2026-07-01', warrantyUntil: '2026-06-30' })?.code).toBe(
      'campaign: days out of order',
    );
    expect(campaignRefused({ ...campaign, began: '2026-03-02', ended: '2026-03-02' })).toBeUndefined();
    expect(campaignRefused(campaign)).toBeUndefined();
  });

  it('is a price below nothing, past all reason, or put down twice', () => {
    expect(bidRefused(bid({ i1: -1 }).body)?.code).toBe('money: below nothing');
    expect(bidRefused(bid({ i1: 10 ** 14 }).body)?.code).toBe('money: too large');
    const twice = [
      { item: 'i1', minor: 1 },
      { item: 'i1', minor: 2 },
    ];
    expect(bidRefused(bid({}, { lines: twice }).body)?.code).toBe('campaign: line twice');
    expect(bidRefused(bid({ i1: 0 }).body)).toBeUndefined();
  });

  it('is a bid that ends before it was made, and one in no currency', () => {
    expect(bidRefused(bid({}, { validUntil: '2026-03-19' }).body)?.code).toBe('campaign: days out of order');
    expect(bidRefused(bid({}, { currency: 'eur' }).body)?.code).toBe('money: not a currency');
  });

  it('is a line without an amount, with its range the wrong way round, or twice', () => {
    expect(quantitiesRefused(quantities([{ ...line, amount: 0 }]))?.code).toBe('campaign: line without an amount');
    expect(quantitiesRefused(quantities([{ ...line, low: 2.1 }]))?.code).toBe('campaign: line range out of order');
    expect(quantitiesRefused(quantities([{ ...line, high: 1.9 }]))?.code).toBe('campaign: line range out of order');
    expect(quantitiesRefused(quantities([line, line]))?.code).toBe('campaign: line twice');
    expect(quantitiesRefused(quantities([{ ...line, low: 1.8, high: 2.2 }]))).toBeUndefined();
  });

  it('is a yes nobody signed, and a signature from before the question', () => {
    expect(approvalRefused({ ...approval, answer: 'yes' })?.code).toBe('campaign: yes without a signature');
    expect(approvalRefused({ ...approval, answer: 'with changes' })?.code).toBe('campaign: yes without a signature');
    expect(approvalRefused({ ...approval, answer: 'open' })).toBeUndefined();
    const early = [{ role: 'estate', on: '2026-05-31' }];
    expect(approvalRefused({ ...approval, answer: 'yes', signed: early })?.code).toBe('campaign: signed before');
  });

  it('is a cause called gone without a day, or let be without a reason', () => {
    expect(causeRefused(cause('tree', { state: 'removed' }).body)?.code).toBe('campaign: say when it changed');
    expect(causeRefused(cause('tree', { state: 'removed', changed: '2026-02-01' }).body)?.code).toBe(
      'campaign: days out of order',
    );
    expect(causeRefused(cause('tree', { state: 'cannot be removed', why: ' ' }).body)?.code).toBe('campaign: say why');
    expect(causeRefused(cause('tree').body)).toBeUndefined();
  });

  it('is a colour card without words or zones, and a letter sent before the paper was read', () => {
    expect(colourCardRefused({ ...card, words: ' ' })?.code).toBe('campaign: card without words');
    expect(colourCardRefused({ ...card, zones: [] })?.code).toBe('campaign: card without a zone');
    expect(colourCardRefused(card)).toBeUndefined();
    const paper = { sculpture, campaign: campaignName, of: 'report' as const, items: [], date: '2026-10-30' };
    expect(completenessRefused({ ...paper, letterSent: '2026-10-29' })?.code).toBe('campaign: days out of order');
  });
});
