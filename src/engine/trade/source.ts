/** Where a fact comes from. `sure` says how far it was checked: a page or data file seen, an abstract only, recalled, or this project's own choice. */
export interface Source {
  readonly text: string;
  readonly sure: 'seen' | 'abstract' | 'from memory' | 'common practice, no source' | 'own choice';
}
