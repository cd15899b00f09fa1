/** One part of the house: what it may import, and the packages at home in it. */
export interface Part {
  readonly imports: readonly string[];
  readonly packages?: readonly string[];
}

const pages = [
  'welcome',
  'sculptures',
  'logbook',
  'settings',
  'round',
  'look',
  'then-and-now',
  'next-steps',
  'method',
  'over-time',
  'holds',
  'eye-check',
  'agreement',
  'place',
  'carry',
  'settle',
  'zone-map',
  'stations',
  'photos',
  'compare',
  'measure',
  'colour',
  'bring',
  'in-step',
  'keeping',
  'plan',
  'money',
  'options',
  'budget',
  'funds',
  'care-day',
  'products',
  'decisions',
  'due',
  'campaign',
  'hot-work',
  'year',
  'incidents',
  'grounds',
  'moves',
  'ready',
  'papers',
  'help',
  'tour',
];
const engine = [
  'engine/chance',
  'engine/numerals',
  'engine/trade',
  'engine/record',
  'engine/condition',
  'engine/change',
  'engine/life',
  'engine/hold',
  'engine/trend',
  'engine/eye',
  'engine/agreement',
  'engine/firmness',
  'engine/site',
  'engine/colour',
  'engine/photo',
  'engine/reckoning',
  'engine/exchange',
  'engine/bag',
  'engine/bring',
  'engine/money',
  'engine/options',
  'engine/budget',
  'engine/fund',
  'engine/weather',
  'engine/care',
  'engine/heat',
  'engine/campaign',
  'engine/watch',
  'engine/year',
];
const device = [
  'device',
  'device/store',
  'device/offline',
  'device/files',
  'device/photo',
  'device/pixels',
  'device/workers',
  'device/bag',
  'device/folder',
];
const deeds = [
  'actions/round',
  'actions/look',
  'actions/carry',
  'actions/photos',
  'actions/bring',
  'actions/in-step',
  'actions/keeping',
  'actions/plan',
  'actions/field',
];
const ui = ['react', 'react-dom', 'wouter'];
/** Round marks of the drawings. */
const drawing = ['d3-array'];
const page: Part = { imports: ['actions', ...engine, 'words', 'screens/parts', 'screens/shell'], packages: ui };

/**
 * Who may import whom. A file belongs to the longest name here that its path starts with; a folder of engine, device
 * or screens that is not named is a fault, so that a new one is a decision.
 */
export const table: Readonly<Record<string, Part>> = {
  'engine/chance': { imports: [] },
  'engine/numerals': { imports: [] },
  'engine/trade': { imports: [] },
  'engine/record': { imports: ['engine/trade'], packages: ['zod'] },
  'engine/condition': { imports: ['engine/record', 'engine/trade'] },
  'engine/change': { imports: ['engine/record', 'engine/trade', 'engine/condition'] },
  'engine/life': { imports: ['engine/chance', 'engine/record'] },
  'engine/hold': { imports: ['engine/chance', 'engine/record', 'engine/trade', 'engine/condition', 'engine/life'] },
  'engine/trend': { imports: ['engine/chance', 'engine/record', 'engine/trade', 'engine/condition', 'engine/change'] },
  'engine/eye': { imports: ['engine/chance', 'engine/record', 'engine/trade', 'engine/condition'] },
  'engine/agreement': { imports: ['engine/chance', 'engine/record', 'engine/trade', 'engine/condition'] },
  'engine/firmness': { imports: ['engine/chance', 'engine/record', 'engine/trade', 'engine/condition'] },
  'engine/site': { imports: ['engine/record', 'engine/trade'] },
  'engine/colour': { imports: ['engine/chance', 'engine/record', 'engine/trade'], packages: ['culori'] },
  'engine/photo': {
    imports: ['engine/chance', 'engine/record', 'engine/trade', 'engine/condition', 'engine/colour'],
  },
  'engine/reckoning': {
    imports: [
      'engine/record',
      'engine/trade',
      'engine/condition',
      'engine/change',
      'engine/life',
      'engine/hold',
      'engine/trend',
      'engine/eye',
      'engine/firmness',
    ],
  },
  'engine/exchange': { imports: ['engine/record', 'engine/trade'], packages: ['zod', 'canonicalize'] },

  'engine/bag': { imports: ['engine/record', 'engine/exchange'] },
  'engine/bring': { imports: ['engine/record', 'engine/trade'], packages: ['papaparse'] },
  'engine/money': { imports: ['engine/record', 'engine/numerals'] },
  'engine/options': {
    imports: ['engine/record', 'engine/trade', 'engine/condition', 'engine/life', 'engine/hold', 'engine/money'],
  },
  'engine/budget': { imports: ['engine/record', 'engine/trade', 'engine/condition', 'engine/money'] },
  'engine/fund': { imports: ['engine/record', 'engine/money'] },
  'engine/weather': { imports: ['engine/record', 'engine/trade'] },
  'engine/care': { imports: ['engine/record', 'engine/trade'] },
  'engine/heat': { imports: ['engine/record', 'engine/trade'] },
  'engine/campaign': {
    imports: ['engine/chance', 'engine/record', 'engine/trade', 'engine/condition', 'engine/money'],
  },
  'engine/watch': {
    imports: [
      'engine/record',
      'engine/trade',
      'engine/condition',
      'engine/change',
      'engine/life',
      'engine/hold',
      'engine/money',
    ],
  },
  'engine/year': { imports: ['engine/record', 'engine/trade', 'engine/condition', 'engine/hold', 'engine/money'] },

  device: { imports: engine, packages: ['uuid'] },
  'device/store': { imports: [...engine, 'device'], packages: ['dexie', 'uuid'] },
  'device/offline': { imports: [...engine, 'device'], packages: ['workbox-window'] },
  'device/files': { imports: [...engine, 'device'] },
  'device/photo': { imports: [...engine, 'device', 'device/offline'] },
  'device/pixels': { imports: [...engine, 'device', 'device/offline'] },
  'device/workers': { imports: [...engine, 'device', 'device/store', 'device/offline'] },
  'device/bag': {
    imports: [...engine, 'device', 'device/store', 'device/offline', 'device/photo'],
    packages: ['client-zip'],
  },
  'device/folder': { imports: [...engine, 'device'] },

  actions: { imports: [...engine, ...device, ...deeds] },
  ...Object.fromEntries(deeds.map((name) => [name, { imports: [...engine, ...device, 'actions', ...deeds] }])),

  words: { imports: engine },
  // What goes into a bag beside the survey, to be read without this app; and the worker that has both sentences and zip.
  papers: { imports: [...engine, 'words', 'device', 'device/bag', 'papers/layout'] },
  // The one layout of all papers, and what a screen shows of it.
  'papers/layout': { imports: ['engine/reckoning', 'words'] },
  'screens/parts': { imports: ['actions', ...engine, 'words'], packages: [...ui, ...drawing] },
  'screens/shell': { imports: ['actions', ...engine, 'words', 'screens/parts'], packages: ui },
  ...Object.fromEntries(pages.map((name) => [`screens/${name}`, page])),
  'screens/papers': { ...page, imports: [...page.imports, 'papers', 'papers/layout'] },

  // Made at build time, by the same deeds a person does, in a store that lives in memory.
  demo: { imports: [...engine, ...device, 'actions'], packages: ['fake-indexeddb', 'node:', 'polyclip-ts', 'sharp'] },
  command: { imports: [...engine, 'words'], packages: ['node:', 'papaparse'] },
  // The language first; with it in place, everything else.
  'main.tsx': { imports: ['device', 'words', 'start.tsx'] },
  'start.tsx': { imports: ['actions', 'device/offline', 'screens/shell', 'words'], packages: ui },
  'sw.ts': { imports: [], packages: ['workbox-precaching', 'workbox-routing'] },
};

/** The shell opens every page, but only lazily: a page is not part of the start code. */
export const mayOpenPagesLazily = 'screens/shell';

/** Second doors: what the start page must not load. Schemas bring Zod; the sentences of figures are as long as a screen; bags are worked on in a worker; the language is chosen before anything has words. */
export const secondDoors = [
  'engine/record/schemas.ts',
  'words/pastStart.ts',
  'words/speakAs.ts',
  'words/notLoaded.ts',
  'start.tsx',
  'engine/trade/named.ts',
  'device/bag/inWorker.ts',
];

/** What the engine must not know. Time, ids, device and seed come in as arguments. */
export const unknownToEngine = [
  /\bDate\.now\b/,
  /\bnew Date\(/,
  /\bMath\.random\b/,
  /(?<![.\w'-])(?:crypto|window|document|indexedDB|fetch|navigator|localStorage|performance|setTimeout)(?=[.([])/,
];

export const forbiddenFolders = ['utils', 'helpers', 'common', 'lib', 'types', 'hooks'];

export const longestFile = 300;

/** Tables of rows that read better in one piece than in two: file, and why. Never over 400 lines. */
export const longTables: Readonly<Record<string, string>> = {};
export const longestTable = 400;
