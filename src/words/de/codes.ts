/** Words of the record that a sentence names as they are kept. */
const words: Readonly<Record<string, string>> = {
  dry: 'trocken',
  damp: 'feucht',
  wet: 'nass',
  'before wash': 'vor dem Waschen',
  'after wash': 'nach dem Waschen',
  annual: 'jährlicher Rundgang',
  autumn: 'Rundgang im Herbst',
  'before treatment': 'Rundgang vor der Behandlung',
  'after treatment': 'Rundgang nach der Behandlung',
  incident: 'Rundgang nach einem Vorfall',
  'in hand': 'vorhanden',
  pledged: 'zugesagt',
  hoped: 'erhofft',
  spent: 'ausgegeben',
  lost: 'weggefallen',
  best: 'beste',
  worst: 'schlechteste',
  copper: 'Kupfer',
  'carbon steel': 'unlegierter Stahl',
  zinc: 'Zink',
};

/** In German; a word of a newer version as it came. */
export const wordOf = (code: string): string => words[code] ?? code;
