import type { Source } from '../trade';

/** How much larger a surface is than what a picture shows of it flat. */
export const obliquities: readonly {
  readonly id: 'flat' | 'curved' | 'folded';
  readonly factor: number;
  readonly source: Source;
}[] = [
  { id: 'flat', factor: 1, source: { text: 'A flat face looked at squarely.', sure: 'own choice' } },
  {
    id: 'curved',
    factor: 1.3,
    source: {
      text: 'Chosen for gentle curves; half a cylinder seen from the front comes to 1.57.',
      sure: 'own choice',
    },
  },
  {
    id: 'folded',
    factor: 1.6,
    source: { text: 'Chosen for deep folds; common practice, no source.', sure: 'own choice' },
  },
];
