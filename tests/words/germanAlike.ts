/** Words that are the same in both languages. */
export const sameWords: ReadonlySet<string> = new Set([
  // Words German has too.
  ...['Zone', 'Name', 'Index', 'Median', 'Text', 'Material', 'Version', 'Patina', 'Propan', 'Trend', 'Letter'],
  // Letters of the classes of EN 16096.
  ...['CC', 'UC', 'RC', 'CC UC RC'],
  // Units and limits without a word in them.
  ...[
    '10 cm',
    'kg',
    'ml',
    'm², m, cm, mm, °C',
    'ft², ft, in, °F',
    '1000 ppm',
    '25 ppm',
    '1 mg/m³',
    '100 mg/m³',
    '50 µg/m³',
  ],
  // Names of files in a bag.
  ...['data/report.html', 'data/papers/', 'data/findings.csv', 'data/survey.json', 'data/survey.schema.json'],
  ...['data/survey.jsonld', 'data/photos/', 'manifest-sha256.txt', 'bagit.txt, bag-info.txt'],
  ...['data/survey.json, data/findings.csv', 'data/photos', 'data/papers'],
  // Law, by its number.
  ...['29 CFR 1926.501(b).', '29 CFR 1910.28(b).'],
]);

/** English in German words that is a title, a publisher or a field of a file. */
export const borrowed: readonly string[] = [
  ...['„at“'],
  ...['Guidelines for the Technical Examination of Bronze Sculpture', 'American Institute for Conservation'],
  ...['Code of Ethics and Guidelines for Practice', 'Color Research and Application', 'Studies in Conservation'],
  ...['Standard Request for Proposals, Selection of Consultants'],
];

/** The German of these has its own figures or units: a key of the keyboard is Home there and Pos1 here. */
export const ownFigures: readonly string[] = ['field.field.keys.rows.3.0'];

/** What may be given where words are chosen by a code. */
export const takesOneOf: Readonly<Record<string, readonly (readonly unknown[])[]>> = {
  'campaign.campaign.quantities.unitOf': [
    ['m2', false],
    ['piece', true],
    ['piece', false],
    ['day', true],
    ['day', false],
  ],
  'campaignBids.quantities.unitOf': [
    ['piece', true],
    ['day', false],
  ],
  'method.method.takesHazard': [
    ['none', '⟦b⟧'],
    ['stain', '⟦b⟧'],
    ['kind', '⟦b⟧'],
  ],
  'paperBoard.paperBoard.whatIfCaption': [
    ['⟦a⟧', 'year', '⟦c⟧'],
    ['⟦a⟧', 'good month', '⟦c⟧'],
  ],
  'paperCondition.paperCondition.namedFrom': [
    ['severity', '⟦b⟧', '⟦c⟧'],
    ['activity', '⟦b⟧', '⟦c⟧'],
    ['count', '⟦b⟧', '⟦c⟧'],
  ],
  'compare.compare.place': [
    [7101, 'earlier'],
    [7101, 'later'],
  ],
  'compare.compare.blinkTo': [['earlier'], ['later']],
  'compare.compare.tapOn': [['earlier'], ['later']],
  'compare.compare.tapDoes': [
    ['green', 'earlier'],
    ['sound', 'later'],
  ],
  'stations.stations.squares.another': [['best'], ['worst']],
  'stations.stations.squareOf': [
    ['best', '⟦b⟧'],
    ['worst', '⟦b⟧'],
  ],
  'stations.stations.squares.edit': [
    ['best', '⟦b⟧'],
    ['worst', '⟦b⟧'],
  ],
};
