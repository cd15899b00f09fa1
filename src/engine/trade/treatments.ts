import { named } from './named';
import type { Source } from './source';

/** What can be done to a zone, and what that does to the reading of its history. */
export interface Treatment {
  readonly id: string;
  readonly name: string;
  /** Puts a coating on: a hold may start. */
  readonly coats: boolean;
  /** Rounds before and after are not one series. Wax is a tick on the axis and breaks nothing. */
  readonly breaksSeries: boolean;
  /** The green is gone when it is done, so a hold that starts here may be assumed clear. */
  readonly cleanStart: boolean;
  /** Not work for the curator alone. */
  readonly askConservator: boolean;
  /** Takes something away for good: metal with its surface, or an old coating. */
  readonly takes?: 'metal' | 'coating';
  /** A flame or hot metal is in use. */
  readonly hot?: true;
  readonly source: Source;
}

const practice: Source = { text: 'Common practice, no source.', sure: 'common practice, no source' };
const procedure: Source = {
  text: 'Hot and cold wax, wash, lacquer: US General Services Administration procedures for bronze, read on its pages. The rest: common practice.',
  sure: 'seen',
};

const plain = { coats: false, breaksSeries: false, cleanStart: false, askConservator: false } as const;

export const treatments: readonly Treatment[] = named('treatments', [
  { ...plain, id: 'wash', name: 'Wash', source: procedure },
  { ...plain, id: 'wax', name: 'Cold wax', coats: true, source: procedure },
  { ...plain, id: 'spot wax', name: 'Spot wax', coats: true, source: procedure },
  { ...plain, id: 'hot wax', name: 'Hot wax', coats: true, askConservator: true, hot: true, source: procedure },
  { ...plain, id: 'lacquer', name: 'Lacquer', coats: true, askConservator: true, source: procedure },
  {
    ...plain,
    id: 'cleaning by media',
    name: 'Cleaning by media',
    takes: 'metal',
    breaksSeries: true,
    cleanStart: true,
    askConservator: true,
    source: practice,
  },
  {
    ...plain,
    id: 'coating removed',
    name: 'Coating removed',
    takes: 'coating',
    breaksSeries: true,
    askConservator: true,
    source: practice,
  },
  {
    ...plain,
    id: 'strip',
    name: 'Stripped to the metal',
    takes: 'metal',
    breaksSeries: true,
    cleanStart: true,
    askConservator: true,
    source: practice,
  },
  {
    ...plain,
    id: 'local treatment',
    name: 'Local treatment',
    breaksSeries: true,
    cleanStart: true,
    askConservator: true,
    source: practice,
  },
  {
    ...plain,
    id: 'local colour',
    name: 'Local colour',
    breaksSeries: true,
    cleanStart: true,
    askConservator: true,
    source: practice,
  },
  {
    ...plain,
    id: 'repatination',
    name: 'Repatination',
    breaksSeries: true,
    cleanStart: true,
    askConservator: true,
    hot: true,
    source: practice,
  },
  { ...plain, id: 'repair', name: 'Repair, fill or refix', askConservator: true, source: practice },
  { ...plain, id: 'cause removed', name: 'Cause removed', breaksSeries: true, source: practice },
  { ...plain, id: 'other', name: 'Other', source: practice },
]);

const byId = new Map(treatments.map((treatment) => [treatment.id, treatment]));

/** The row of a treatment, or undefined for a code this version does not know. */
export const treatmentOf = (id: string): Treatment | undefined => byId.get(id);
