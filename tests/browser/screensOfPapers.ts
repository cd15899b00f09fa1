import { type Entry, idPart } from '../../src/engine/record';
import { w } from '../../src/words';
import type { Screen } from './screensOfGarden';

/** Papers, help, and what is looked at before going out. Each kind of paper has its turn in papers.test.ts. */
export function screensOfPapers(entries: readonly Entry[]): readonly Screen[] {
  const work = entries.find(({ kind, body }) => kind === 'sculpture' && body.number === 'SW-02')!.thing;
  const about = encodeURIComponent(work);
  return [
    { name: 'plan', hash: '#/plan' },
    { name: 'plan of a work', hash: `#/sculpture/${idPart(work)}/plan` },
    { name: 'papers', hash: '#/papers' },
    { name: 'papers of a work', hash: `#/papers/of/${about}` },
    { name: 'a paper', hash: `#/papers/condition-report/${about}` },
    { name: 'where things are kept', hash: '#/papers/kept' },
    { name: 'sheet: where a thing is kept', hash: '#/papers/kept', touch: [w.paperKept.add], sheet: true },
    { name: 'page of a conservator, typed in', hash: `#/sculpture/${idPart(work)}/conservator-page` },
    { name: 'carry one work', hash: `#/carry/of/${idPart(work)}` },
    { name: 'ready for the field', hash: '#/ready' },
    { name: 'help', hash: '#/help' },
    { name: 'help on a screen', hash: `#/help/${Object.keys(w.helpRound)[0]}` },
  ];
}
