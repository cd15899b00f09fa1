import { describe, expect, it } from 'vitest';
import { conservatorPacket } from '../../../src/papers/collection/conservatorPacket';
import { textOf } from '../../../src/papers/layout';
import { gardenSurvey, sourceOf } from '../../files/gardenSource';

const garden = sourceOf(gardenSurvey());
const of = (number: string) => garden.works.find(({ record }) => record.sculpture.body.number === number)!;
const paper = (number: string) => conservatorPacket.make(garden, of(number).record.sculpture.thing)!;
const text = (number: string) => textOf(paper(number).body);

describe('The packet for the conservator', () => {
  it('goes with a bag of the work, and says what lies in it and how much', () => {
    expect(conservatorPacket.withBag).toBe(true);
    const said = text('SW-02');
    const { record, within } = of('SW-02');
    expect(said).toContain(`data/survey.json, data/findings.csv ${record.rounds.length}, 11 May 2021 to 12 May 2026`);
    const photos = within.filter(({ kind }) => kind === 'photo').length;
    expect(said).toContain(`data/photos ${photos} `);
    expect(said).toContain('manifest-sha256.txt');
  });

  it('says what was not looked at before anything is asked or told', () => {
    const said = text('SW-02');
    expect(said.indexOf('Not looked at')).toBeLessThan(said.indexOf('What we ask'));
  });

  it('asks what the record cannot answer, and answers nothing itself', () => {
    const said = text('SW-02');
    expect(said).toMatch(/zone I, Base ring: on 12 May 2026 we wrote down “Pale powdery mounds”\. What is it,/);
    expect(said).toMatch(/zone H, Lower arcs, spray band: waxing does not hold\. What may be done instead/);
    expect(said).toContain('Spray of a basin or fountain (zones H and I) goes on.');
    expect(said.slice(0, said.indexOf('Thought, not seen'))).not.toMatch(/chloride|bronze disease/i);
  });

  it('tells products and how long they held, each with how that is known', () => {
    const said = text('SW-01');
    expect(said).toMatch(/zone D, Coat folds, weather side 21 May 2026 1\.4 to 2\.5 green back/);
    expect(said).toContain('From the last look that saw no green to the first that did');
    expect(said).toMatch(/Cold wax .* 6 21 May 2026/);
  });

  it('keeps what was thought in a box of its own', () => {
    const [box] = paper('SW-02').body.slice(-1) as { at: { class?: string } }[];
    expect(box?.at.class).toBe('box thought');
  });

  it('begins her field with the questions drafted, and prints hers once there are any', () => {
    const [own] = paper('SW-02').own;
    expect(own).toMatchObject({ part: 'questions', text: '' });
    expect(own?.drafted).toContain('What is it');
  });
});
