import { named } from './named';
import type { Source } from './source';

/** How a coverage was judged, and what that says of its error. Standard deviations are on the logit scale. */
export interface CoverageMethod {
  readonly id: 'ladder' | 'ladder, adjusted' | 'dots' | 'traced' | 'photo';
  readonly name: string;
  /** The person's own spread from one time to the next, or null where the stored low and high are the 90 % range themselves. */
  readonly ownSd: number | null;
  /** Light and damp of the day shift all of them together. */
  readonly sharedByDay: boolean;
  /** It speaks of the photo's share, not of the zone's. */
  readonly ofPhoto: boolean;
  readonly source: Source;
}

const byEye: Source = {
  text: 'Chosen inside the published error of one observer repeating, 5 to 15 points of cover at 90 %: Sykes, Horrill and Mountford 1983, J. Ecology 71:437-450 (abstract).',
  sure: 'own choice',
};

export const coverageMethods: readonly CoverageMethod[] = named('coverageMethods', [
  { id: 'ladder', name: 'by eye, on the ladder', ownSd: 0.3, sharedByDay: true, ofPhoto: false, source: byEye },
  { id: 'ladder, adjusted', name: 'by eye, adjusted', ownSd: 0.3, sharedByDay: true, ofPhoto: false, source: byEye },
  {
    id: 'dots',
    name: 'counted dots',
    ownSd: null,
    sharedByDay: false,
    ofPhoto: true,
    source: {
      text: 'Wilson score interval of the dots counted: Newcombe 1998, Stat. Med. 17:857-872; its ends pushed out at one to three hits: Brown, Cai and DasGupta 2001, Statist. Sci. 16:101-133 (from memory).',
      sure: 'abstract',
    },
  },
  {
    id: 'traced',
    name: 'traced',
    ownSd: 0.15,
    sharedByDay: true,
    ofPhoto: true,
    source: {
      text: 'Half of the error by eye: tracing was closer and more repeatable in Dethier and others 1993, Mar. Ecol. Prog. Ser. 96:93-100 (abstract).',
      sure: 'own choice',
    },
  },
  {
    id: 'photo',
    name: 'measured in the photo',
    ownSd: null,
    sharedByDay: false,
    ofPhoto: true,
    source: { text: 'What the mask and its check dots report, slips allowed for.', sure: 'own choice' },
  },
]);

const byId = new Map<string, CoverageMethod>(coverageMethods.map((method) => [method.id, method]));

export const coverageMethodOf = (id: CoverageMethod['id']): CoverageMethod => byId.get(id) as CoverageMethod;
