import type { AskedRound } from '../../../actions';
import { levelOf as classLevelOf } from '../../../engine/condition';
import { enClasses } from '../../../engine/trade';
import { figure, roundName, w, whole } from '../../../words';
import { type IndexLevel, levelFloors, levelOf } from '../../parts';
import type { KeyRow, Shading } from './shading';

const words = w.zoneMap;
const open = 'none';

const fromOf = ({ record, round }: AskedRound): string => {
  const here = record.rounds.find(({ thing }) => thing === round);
  return here ? words.shadeFrom.round(roundName(here)) : words.shadeFrom.none;
};

const indexRows: readonly KeyRow[] = ([1, 2, 3, 4, 5] as const).map((level) => {
  const floor = levelFloors.find((row) => row[1] === level)?.[0] ?? 0;
  const above = levelFloors.find((row) => row[1] === level - 1)?.[0];
  const word = words.level(w.parts.level[level], whole(floor), whole(above === undefined ? 100 : above - 1));
  return { code: String(level), fill: level, word };
});

/** Condition index of each zone in a round. */
export const indexShading = (asked: AskedRound): Shading => ({
  key: [...indexRows, { code: open, fill: 'open', word: words.notLooked }],
  from: fromOf(asked),
  of: (zone) => {
    const score = asked.score.zones.find((row) => row.zone === zone);
    if (!score) return { code: open, said: words.notLooked };
    const { value, range } = figure(score);
    const level = levelOf(score.value);
    return { code: String(level), said: `${value} (${range}), ${w.parts.level[level]}` };
  },
});

/** The four classes take the steps of the scale that are furthest apart. */
const stepOfClass: Readonly<Record<0 | 1 | 2 | 3, IndexLevel>> = { 0: 1, 1: 3, 2: 4, 3: 5 };
const letters = { condition: 'CC', urgency: 'UC' } as const;

/** Condition or urgency class of each zone in a round, as set by a person, else as proposed. */
export const classShading = (asked: AskedRound, which: 'condition' | 'urgency'): Shading => {
  const word = (level: 0 | 1 | 2 | 3): string => `${letters[which]}${level}, ${enClasses[which][level]?.name ?? ''}`;
  const rows = ([0, 1, 2, 3] as const).map(
    (level): KeyRow => ({ code: String(level), fill: stepOfClass[level], word: word(level) }),
  );
  return {
    key: [...rows, { code: open, fill: 'open', word: words.noClass }],
    from: fromOf(asked),
    of: (zone) => {
      const classes = asked.classes.zones.find(({ about }) => about === zone);
      const level = classes ? classLevelOf(classes, which) : null;
      return level === null ? { code: open, said: words.noClass } : { code: String(level), said: word(level) };
    },
  };
};
