import { describe, expect, it } from 'vitest';
import { stepAfter, stepsOfCampaign } from '../../../src/engine/campaign';
import { type BodyOf, nameOf } from '../../../src/engine/record';
import { campaignSteps, paperItems } from '../../../src/engine/trade';
import { codes, invented } from '../change/invented';
import { bid, campaignName, cause, file, insert, sculpture, thing, work, zone } from './drawnUp';

const at = (steps: ReturnType<typeof stepsOfCampaign>, id: string) => steps.find(({ step }) => step.id === id);
const lacksAt = (given: Parameters<typeof file>, id: string) =>
  codes(at(stepsOfCampaign(file(...given)), id)?.lacks ?? []);
const approval = (of: BodyOf<'approval'>['of'], answer: BodyOf<'approval'>['answer'], date = '2026-06-01') =>
  thing<'approval'>(nameOf.approval(`${of}${answer}${date}`), {
    ...{ sculpture, campaign: campaignName, of, date, answer, words: 'seen', signed: [{ role: 'estate', on: date }] },
  });
const card = (photos: Partial<BodyOf<'colourCard'>>) =>
  thing<'colourCard'>(nameOf.colourCard('k'), {
    ...{ sculpture, campaign: campaignName, zones: [zone('A')], date: '2026-06-02', words: 'brown', signed: [] },
    ...photos,
  });

describe('Where a campaign stands', () => {
  it('is one step; those before it are done or left open, those after it ahead', () => {
    const steps = stepsOfCampaign(file({ step: 'money', fund: nameOf.fund('f') }));
    expect(steps.map(({ step }) => step.id)).toEqual(campaignSteps.map(({ id }) => id));
    expect(at(steps, 'trigger')?.state).toBe('done');
    expect(at(steps, 'causes')?.state).toBe('left open');
    expect(at(steps, 'money')?.state).toBe('now');
    expect(at(steps, 'request')?.state).toBe('ahead');
  });

  it('counts as the first step where its own is not known, and has no step under way once it was given up', () => {
    expect(at(stepsOfCampaign(file({ step: 'of a newer version' })), 'trigger')?.state).toBe('now');
    const over = stepsOfCampaign(file({ step: 'money', givenUp: 'no money' }));
    expect(over.some(({ state }) => state === 'now')).toBe(false);
  });

  it('goes to each next step and no further than the last', () => {
    const walked = [campaignSteps[0]?.id ?? ''];
    for (let next = stepAfter(walked[0] ?? ''); next; next = stepAfter(next.id)) walked.push(next.id);
    expect(walked).toEqual(campaignSteps.map(({ id }) => id));
  });

  it('keeps a cause that is open in sight however far the campaign has gone', () => {
    const steps = stepsOfCampaign(file({ step: 'patina' }, { cause: [cause('sprinkler')] }));
    expect(at(steps, 'causes')).toMatchObject({ state: 'left open', lacks: [{ code: 'campaign: cause open' }] });
  });

  it('asks for schedule, whole request, bids and a choice before bids are behind it', () => {
    expect(lacksAt([{}], 'request')).toEqual([
      'campaign: no schedule',
      'campaign: paper not looked through',
      'campaign: no bids',
    ]);
    const own = bid({ i1: 5 });
    const quantities = thing<'quantities'>(nameOf.quantities(campaignName), {
      ...{ sculpture, campaign: campaignName, date: '2026-03-03' },
      items: [{ id: 'i1', zone: zone('A'), name: 'A', task: 'clean down', unit: 'm2', amount: 2 }],
    });
    const paper = thing<'completeness'>(nameOf.completeness(campaignName, 'request', 'own'), {
      ...{ sculpture, campaign: campaignName, of: 'request', date: '2026-03-03' },
      items: paperItems.request.map(({ id }) => ({ id, state: 'there' })),
    });
    const planned = { quantities: [quantities], bid: [own], completeness: [paper] };
    expect(lacksAt([{}, planned], 'request')).toEqual(['campaign: none taken']);
    expect(lacksAt([{ takenBid: own.thing }, planned], 'request')).toEqual([]);
  });

  it('does not take the bids, papers and layers of another campaign for its own', () => {
    const other = bid({ i1: 5 }, { campaign: nameOf.campaign('other') });
    expect(lacksAt([{}, { bid: [other] }], 'request')).toContain('campaign: no bids');
  });

  it('asks for every insert how it is kept, and whose word its limit is', () => {
    const record = work({ inserts: [insert('L1'), insert('L2'), insert('L3')] });
    const care = (id: string, body: Partial<BodyOf<'insertCare'>>) =>
      thing<'insertCare'>(nameOf.insertCare(nameOf.insert(id)), { sculpture, insert: nameOf.insert(id), ...body });
    const insertCare = [care('L1', { method: 'remove' }), care('L2', { method: 'shield', most: 60 })];
    expect(at(stepsOfCampaign(file({}, { insertCare }, record)), 'inserts')).toMatchObject({
      there: [{ code: 'campaign: inserts provided for', params: { count: 1 } }],
      lacks: [
        { code: 'campaign: insert limit without a name', params: { insert: nameOf.insert('L2') } },
        { code: 'campaign: insert without a way', params: { insert: nameOf.insert('L3') } },
      ],
    });
  });

  it('takes only a round before the first day of work for the record before, and one after its last for the one after', () => {
    const walked = (type: 'before treatment' | 'after treatment', date: string) =>
      invented({ zones: { A: { m2: 1 } }, rounds: [{ date, type, saw: { A: 'nothing' } }] });
    const days = { began: '2026-06-01', ended: '2026-06-20' };
    const before = (date: string) => lacksAt([days, {}, walked('before treatment', date)], 'before');
    expect(before('2026-06-01')).toEqual([]);
    expect(before('2026-06-02')).toEqual(['campaign: no round before']);
    expect(before('2025-06-01')).toEqual(['campaign: no round before']);
    const after = (date: string) =>
      lacksAt([{ ...days, warrantyUntil: '2029-01-01' }, {}, walked('after treatment', date)], 'watch');
    expect(after('2026-06-20')).toEqual([]);
    expect(after('2026-06-19')).toEqual(['campaign: no round after']);
  });

  it('goes by the last word: a sample area refused after a yes is refused', () => {
    const yes = approval('sample area', 'yes', '2026-06-01');
    const no = approval('sample area', 'no', '2026-06-03');
    expect(lacksAt([{}, { approval: [yes] }], 'strip')).toEqual([]);
    expect(lacksAt([{}, { approval: [no, yes] }], 'strip')).toEqual(['campaign: refused']);
    expect(lacksAt([{}, { approval: [approval('sample area', 'open')] }], 'strip')).toEqual(['campaign: not approved']);
  });

  it('asks for the four photos of the agreed colour', () => {
    const approved = [approval('colour', 'yes')];
    const photo = nameOf.photo('p');
    expect(lacksAt([{}, { approval: approved }], 'colour')).toEqual(['campaign: no colour card']);
    expect(
      at(stepsOfCampaign(file({}, { approval: approved, colourCard: [card({ dryShade: photo })] })), 'colour')?.lacks,
    ).toEqual([{ code: 'campaign: colour card lacks photos', params: { count: 3 } }]);
    const four = card({ dryShade: photo, drySun: photo, wetShade: photo, wetSun: photo });
    expect(lacksAt([{}, { approval: approved, colourCard: [four] }], 'colour')).toEqual([]);
  });

  it('does not call a report handed over while it lacks something', () => {
    expect(lacksAt([{}, { approval: [approval('handover', 'yes')] }], 'report')).toEqual([
      'campaign: paper not looked through',
    ]);
  });
});
