import { type Entry, idPart } from '../../src/engine/record';
import { w } from '../../src/words';
import type { Screen } from './screensOfGarden';

/** Decisions with their tripwires, and what is due: of all works, and of the one whose tripwire has come. */
export function screensOfDecisions(entries: readonly Entry[]): readonly Screen[] {
  const stair = entries.find(({ kind, body }) => kind === 'sculpture' && body.number === 'SW-02')!.thing;
  const decisions = `#/decisions/${idPart(stair)}`;
  const title = String(entries.find(({ kind, within }) => kind === 'decision' && within === stair)?.body.title);
  return [
    { name: 'decisions of all', hash: '#/decisions' },
    { name: 'decisions of a work', hash: decisions },
    { name: 'sheet: decision', hash: decisions, touch: [w.decisions.add], sheet: true },
    { name: 'sheet: tripwire', hash: decisions, touch: [w.decisions.add, w.decisions.form.wireAdd], sheet: true },
    { name: 'sheet: decide anew', hash: decisions, touch: [w.decisions.anewOf(title)], sheet: true },
    { name: 'due', hash: '#/due' },
    { name: 'due by walk', hash: '#/due', touch: [w.due.byWalk] },
    { name: 'sheet: task', hash: '#/due', touch: [w.due.task.add], sheet: true },
    { name: 'sheet: calendar', hash: '#/due', touch: [w.due.calendar.do], sheet: true },
  ];
}
