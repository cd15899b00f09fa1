import { named } from './named';
import type { Source } from './source';

/** When a reading near an insert calls for attention. */
export const alarmRules: {
  readonly under: number;
  readonly share: number;
  readonly longestGap: number;
  readonly leastLimit: number;
  readonly nightEnds: number;
  readonly source: Source;
} = {
  /** So many degrees under a limit the alarm is raised; of a small limit, this share of it. */
  under: 10,
  share: 0.25,
  /** Minutes between two readings after which what lay between is not known. */
  longestGap: 10,
  /** Degrees Celsius: the sun alone makes dark metal warmer, so a limit below it is a slip of the pen. */
  leastLimit: 30,
  /** Minute of the day before which a reading may belong to work begun the evening before: six in the morning. */
  nightEnds: 360,
  source: {
    text: 'Ten degrees under the limit: common practice, no source. A quarter of a small limit, ten minutes, thirty degrees, six in the morning: our own choice.',
    sure: 'common practice, no source',
  },
};

const practice: Source = { text: 'Common practice, no source.', sure: 'common practice, no source' };
const handbook: Source = { text: 'Handbook figure.', sure: 'from memory' };

/** How an insert sits in the metal. */
export const beddings: readonly {
  readonly id: string;
  readonly name: string;
  readonly caution?: string;
  readonly source: Source;
}[] = named('beddings', [
  { id: 'resin', name: 'Resin', caution: 'softens or burns well below the heat of colouring', source: practice },
  { id: 'lead', name: 'Lead', caution: 'melts at 327 °C; its fume is poisonous', source: handbook },
  { id: 'putty', name: 'Putty', caution: 'dries out, cracks, can smoke', source: practice },
  { id: 'gasket', name: 'Gasket', caution: 'rubber hardens or burns', source: practice },
  { id: 'mortar', name: 'Mortar or plaster', source: practice },
  { id: 'not known', name: 'Not known', caution: 'treat it as the most tender', source: practice },
]);
