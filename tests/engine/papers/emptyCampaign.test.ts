import { describe, expect, it } from 'vitest';
import { nameOf } from '../../../src/engine/record';
import { boardCase } from '../../../src/papers/campaign/boardCase';
import { treatmentDossier } from '../../../src/papers/campaign/dossier';
import { fundSheet } from '../../../src/papers/campaign/fundSheet';
import { requestForProposals } from '../../../src/papers/campaign/requestForProposals';
import { siteCard } from '../../../src/papers/campaign/siteCard';
import { paperHtml, textOf } from '../../../src/papers/layout';
import { gardenDay, gardenSurvey, sourceOf } from '../../files/gardenSource';

const survey = gardenSurvey();
const kept = new Set(['collection', 'surveyor', 'sculpture', 'campaign']);
const bare = {
  ...survey,
  entries: survey.entries
    .filter(({ kind }) => kept.has(kind))
    .map((entry) =>
      entry.kind === 'campaign'
        ? {
            ...entry,
            body: { sculpture: entry.body.sculpture, title: entry.body.title, opened: '2026-10-01', step: 'trigger' },
          }
        : entry,
    ),
};
const source = sourceOf(bare as typeof survey);
const campaigns = source.works.flatMap(({ within }) => within.filter(({ kind }) => kind === 'campaign'));
const issue = { author: '', status: 'draft', day: gardenDay, size: 'A4', invented: true } as const;

describe('A campaign of which nothing is written but its name', () => {
  it.each([boardCase, requestForProposals, siteCard, treatmentDossier].map((sort) => [sort.id, sort] as const))(
    'the paper “%s” is made all the same, holds no gap in its sentences, and says beside it what is lacking',
    (_, sort) => {
      expect(campaigns).toHaveLength(2);
      for (const { thing } of campaigns) {
        const paper = sort.make(source, thing);
        if (!paper) throw new Error('No paper was made.');
        expect(paper.lacks.length).toBeGreaterThan(2);
        const html = paperHtml(paper, issue, () => undefined);
        expect(html).not.toMatch(/undefined|NaN|\[object|Invalid Date/);
        expect(
          textOf(paper.body).startsWith('Not looked at') || sort === requestForProposals || sort === siteCard,
        ).toBe(true);
      }
    },
  );

  it('its dossier is not offered: nothing was begun', () => {
    expect(treatmentDossier.choices(source)).toEqual([]);
  });

  it('a paper of a campaign or a fund that is not here is not made', () => {
    const gone = nameOf.campaign('0192f000-0000-7000-8000-0000000000ff');
    for (const sort of [boardCase, requestForProposals, siteCard, treatmentDossier, fundSheet])
      expect(sort.make(source, gone)).toBeUndefined();
  });
});

describe('The demo', () => {
  it('no paper of a campaign holds a gap where a value should be', () => {
    const all = sourceOf(survey);
    for (const sort of [boardCase, requestForProposals, siteCard, treatmentDossier, fundSheet])
      for (const { about } of sort.choices(all)) {
        const paper = sort.make(all, about);
        if (!paper) throw new Error('No paper was made.');
        expect(
          paperHtml(paper, issue, () => undefined),
          sort.id,
        ).not.toMatch(/undefined|NaN|\[object|Invalid Date|\.\.</);
      }
  });
});
