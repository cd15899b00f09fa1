import { describe, expect, it } from 'vitest';
import { nameOf } from '../../../src/engine/record';
import { paperHtml, textOf } from '../../../src/papers/layout';
import { bodies, first, uuid, zoneB } from '../../files/entries';
import {
  allOf,
  everyText,
  garden,
  hostile,
  ofClass,
  paperOf,
  round,
  sculpture,
  smallWith,
  wordsOf,
  workNamed,
  workOfZones,
  zoneA,
} from './paperOf';

const report = (source = garden(), about = workNamed('SW-02')) => paperOf('condition-report', source, about);
const issue = { author: 'Steward', status: 'draft', day: '2026-11-26', size: 'A4', invented: true } as const;

describe('the condition report of the stair in the demo', () => {
  it('says what was not looked at before anything else, and dangers before the work', () => {
    const [left, dangers] = report().body;
    expect(ofClass('not-looked')(left as never)).toBe(true);
    expect(textOf(left)).toContain('All 9 zones were looked at on 12 May 2026.');
    expect(textOf(left)).toContain('Nothing was opened, sampled or tested');
    expect(textOf(dangers)).toContain('the record named no danger to people that was still open');
  });

  it('holds identification, purpose, examiner, day and the conditions of looking', () => {
    const text = wordsOf(report());
    for (const told of [
      'SW-02',
      'Half-Tide Stair',
      'The yearly survey of the condition.',
      'Examined by Steward',
      'Annual, 12 May 2026',
      'dry, before washing',
      'overcast, as written with the photos',
      'from a lift: A, B, C, D, E, F, G; from a ladder: H; from the ground: I',
      '6 earlier rounds, 11 May 2021 to 9 October 2025',
    ])
      expect(text).toContain(told);
  });

  it('tells where keys and ladders are to nobody', () => {
    expect(wordsOf(report())).not.toContain('isolate the pump');
  });

  it('gives the index with its range and says how it came about', () => {
    const [index] = allOf(report().body, ofClass('figure'));
    expect(textOf(index)).toMatch(/Condition index \d+ \(\d+ to \d+\) .*90 % range.*Scale 2026\.1/);
  });

  it('tells each class as the rule proposes it and that nobody has set it, in the order of EN 16096', () => {
    const text = wordsOf(report());
    expect(text).toMatch(/Condition CC2, plain signs not set .*Urgency UC2, soon not set .*Recommendation RC2/);
    expect(text).toContain('They name no cause and prescribe no treatment.');
  });

  it('has a row for each zone with area, index, classes and findings, and one line on how they came about', () => {
    const text = wordsOf(report());
    expect(text).toContain('H, Lower arcs, spray band');
    expect(text).toContain('Even green film, in the metal, 75 % of the zone (60 % to 86 %), moderate, active.');
    expect(text).toContain('Water on the surface: wets and darkens.');
    expect(text).toContain('Area in m² with its 90 % range: from girth and height, strip by strip.');
  });

  it('draws each side with letters and hatches, told by pattern and not by colour', () => {
    const drawings = allOf(report().body, ({ tag, at }) => tag === 'svg' && at.role === 'img');
    expect(drawings.length).toBe(1);
    expect(drawings[0]?.at['aria-label']).toContain('the basin edge');
    const fills = allOf(drawings, ({ tag }) => tag === 'path').map(({ at }) => at.fill);
    expect(fills).toContain('url(#coverage-4)');
    const patterns = allOf(report().body, ({ tag }) => tag === 'pattern').map(({ at }) => at.id);
    for (const fill of fills.filter(Boolean)) expect(patterns).toContain(/#(.*)\)/.exec(String(fill))?.[1]);
  });

  it('compares with the last round of the same kind and state, and keeps sure changes apart from unsure ones', () => {
    const text = wordsOf(report());
    expect(text).toContain('Compared with the round of 13 May 2025 (Annual, dry, before washing)');
    expect(text).toMatch(
      /Changed by more than both errors The whole work: Worse, index 67 \(66 to 68\) then, 64 \(63 to 65\) now\. I, Base ring: Worse, .*Pale powdery mounds\. Worse: new\. Perhaps changed, not sure/,
    );
    expect(text).toContain('By chance alone');
    expect(text).toContain('It does not say what caused it.');
  });

  it('never puts what was seen and what was thought into one box', () => {
    const { body } = report();
    const seen = textOf(allOf(body, ofClass('seen')));
    const thought = textOf(allOf(body, ofClass('thought')));
    expect(seen).toContain('Pale powdery mounds, in the metal: I.');
    // A wax lies on the metal: to say where in the metal it wears would be more than was seen.
    expect(seen).toContain('Wax patchy or worn: A 20');
    expect(seen).not.toContain('Wax patchy or worn, in the metal');
    expect(seen).not.toContain('chloride');
    expect(thought).toContain('I, Base ring: Spot test for chloride');
    expect(thought).toContain('Conservator, 18 November 2025');
    expect(wordsOf(report()).split('chloride').length).toBe(2);
  });

  it('ends with room to sign for who examined', () => {
    expect(textOf(allOf(report().body, ofClass('signatures')))).toContain('Steward, examined');
  });

  it('says beside the paper that nobody has set a class', () => {
    expect(report().lacks).toEqual([expect.stringContaining('No class of the whole work is set by a person')]);
  });
});

describe('a condition report of a work', () => {
  it('names the zone nobody visited, before all else', () => {
    const [left] = paperOf('condition-report', smallWith()).body;
    expect(textOf(left)).toContain('1 of 2 zones were looked at on 12 May 2026: 50 % of the area.');
    expect(textOf(left)).toContain('B, Base, 1.20 m²: not visited in this round');
  });

  it.each([
    ['could not reach it', { state: 'not looked', reason: 'reach' }],
    ['taken over from an earlier round, not judged again', { state: 'carried', carriedFrom: nameOf.round(uuid(77)) }],
  ] as const)('says why a zone was left: %s', (why, over) => {
    const visit = first(6000, nameOf.visit(round, zoneB), 'visit', bodies.visit({ zone: zoneB, ...over }));
    expect(textOf(paperOf('condition-report', smallWith(visit)).body[0])).toContain(`B, Base, 1.20 m²: ${why}`);
  });

  it('tells an open danger in its own box, before the work', () => {
    const paper = paperOf('condition-report', smallWith());
    expect(ofClass('danger')(paper.body[1] as never)).toBe(true);
    expect(textOf(paper.body[1])).toContain('leans');
  });

  it('marks a class a person set, and by whom', () => {
    const set = first(6001, nameOf.classSet(round, sculpture), 'classSet', {
      ...{ sculpture, round, about: sculpture, condition: 3, setBy: 'Ilka Imagined' },
    });
    const text = wordsOf(paperOf('condition-report', smallWith(set)));
    expect(text).toContain('CC3, strong signs. Set by Ilka Imagined');
    expect(text).toContain('2* ');
  });

  it('takes her own words for the purpose in place of what is drafted, and offers places for light and a summary', () => {
    const paper = paperOf('condition-report', smallWith());
    expect(wordsOf(paper)).toContain('Purpose For the loan');
    expect(wordsOf(paper)).not.toContain('The yearly survey of the condition.');
    expect(paper.own.map(({ part }) => part)).toEqual(['purpose', 'light', 'summary']);
  });

  it('says of a round entered from paper when and by whom it was entered', () => {
    const typed = first(
      6004,
      round,
      'round',
      bodies.round({ ended: '2026-05-12', fromPaper: { entered: '2026-05-14', surveyor: nameOf.surveyor(uuid(7)) } }),
      { replaces: [uuid(113)] },
    );
    expect(wordsOf(paperOf('condition-report', smallWith(typed)))).toMatch(
      /Annual, 12 May 2026\. .*14 May 2026.*Steward/,
    );
  });

  it('without a round says so, and nothing of a condition', () => {
    const paper = paperOf('condition-report', workOfZones(3, false));
    expect(textOf(paper.body[0])).toContain('No round of this work has been made yet.');
    expect(wordsOf(paper)).not.toMatch(/index|CC\d/i);
    expect(paper.lacks.length).toBe(1);
  });

  it('without a zone is made all the same', () => {
    const paper = paperOf('condition-report', workOfZones(0, true));
    expect(textOf(paper.body[0])).toContain('Nothing of its condition is recorded.');
    expect(wordsOf(paper)).toContain('Zones 0 zones');
  });

  it('of forty zones has forty rows, each of them a row that no page cuts', () => {
    const paper = paperOf('condition-report', workOfZones(40, true));
    const table = allOf(paper.body, ({ tag }) => tag === 'table').find((each) => textOf(each).includes('Part 40'));
    expect(allOf(table, ({ tag, at }) => tag === 'th' && at.scope === 'row').length).toBe(40);
    expect(table?.at.class).toBeUndefined();
    expect(textOf(paper.body[0])).toContain('All 40 zones');
  });

  it('says of another round that it is not compared where kind or state differ', () => {
    const earlier = nameOf.round(uuid(78));
    const text = wordsOf(
      paperOf(
        'condition-report',
        smallWith(
          first(
            6002,
            earlier,
            'round',
            bodies.round({ date: '2025-05-12', washed: 'after wash', ended: '2025-05-12' }),
          ),
          first(6003, nameOf.visit(earlier, zoneA), 'visit', bodies.visit({ round: earlier, state: 'nothing' })),
        ),
      ),
    );
    expect(text).toContain('Its figures are not compared here');
    expect(text).not.toContain('Changed by more than both errors');
  });

  it.each(hostile)('what a person wrote stands as text, whatever it holds: %s', (text) => {
    const html = paperHtml(paperOf('condition-report', everyText(text)), issue, () => undefined);
    const plain = paperHtml(paperOf('condition-report', everyText('Plain')), issue, () => undefined);
    const tags = (page: string) => [...page.matchAll(/<[a-z/!][^>]*>/gi)].map(([tag]) => tag.split(/[\s>]/)[0]);
    expect(tags(html)).toEqual(tags(plain));
    expect(html).not.toContain(text);
  });
});
