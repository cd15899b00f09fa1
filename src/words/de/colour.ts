import type { colour as english } from '../en/colour';
import { list, number } from '../format';
import type { Same } from '../tongue';

const tenths = (value: number): string => {
  const rounded = Math.round(value * 10) / 10;
  return Number.isInteger(rounded) ? `${number(rounded, 0)},0` : number(rounded, 1);
};
const signed = (value: number): string => tenths(value).replace('-', '−');

/** The larger step first; what rounds to nothing is not said. */
const direction = (parts: { readonly L: number; readonly a: number; readonly b: number }): string => {
  const steps = [
    { by: parts.L, up: 'heller', down: 'dunkler' },
    { by: parts.a, up: 'röter', down: 'grüner' },
    { by: parts.b, up: 'gelber', down: 'blauer' },
  ]
    .filter(({ by }) => Math.abs(by) >= 0.05)
    .sort((one, other) => Math.abs(other.by) - Math.abs(one.by))
    .map(({ by, up, down }) => `um ${tenths(Math.abs(by))} ${by > 0 ? up : down}`);
  return steps.length === 0 ? 'in allen drei Werten gleich' : list(steps);
};

export const colour: Same<typeof english> = {
  title: 'Farbe',
  lead: 'Was ein Gerät gemessen hat, gegen den vereinbarten Farbton und gegen die Messung davor gehalten.',
  noPhotos: 'Kein Wert auf dieser Seite kommt von einem Foto.',
  noPhotosWhat:
    'Ein Foto hält Licht und Wetter ebenso fest wie die Farbe. Fotos werden nebeneinander angesehen; ein Unterschied wird nur zwischen Messungen eines Geräts genannt, die auf dieselbe Weise gemacht sind.',
  toCompare: 'Fotos nebeneinanderlegen',
  none: 'Noch wurde keine Farbe gemessen',
  noneWhat:
    'Kommt ein Restaurator mit einem Kolorimeter oder Spektralphotometer, bitten Sie um drei oder mehr Aufsetzungen an jeder Stelle, um L*, a* und b* von jeder und um die Angabe, wie gemessen wurde. Schreiben Sie auf, wo es aufgesetzt wurde, damit es dort wieder aufgesetzt werden kann.',
  addReading: 'Messung eintragen',
  addAgreed: 'Vereinbarten Farbton eintragen',

  agreed: 'Vereinbarte Farbtöne',
  agreedLead: 'Was die Oberfläche behalten soll, wie vereinbart.',
  agreedNone:
    'Keiner ist eingetragen. Wurde nach einer Behandlung ein Farbton freigegeben, tragen Sie ihn hier ein: Messungen werden dann dagegen gehalten.',
  agreedBy: (day: string, by: string) => `Vereinbart am ${day}, von ${by}`,
  keptAt: (where: string) => `Musterplatte: ${where}`,
  editAgreed: (name: string) => `„${name}“ ändern`,

  spots: 'Gemessene Stellen',
  spotsLead: 'Eine Stelle ist ein Ort, an dem das Gerät aufgesetzt wurde. Die zuletzt gemessene steht zuerst.',
  wholeWork: 'Das ganze Werk',
  place: (letter: string, name: string) => `${letter}, ${name}`,
  square: (which: 'best' | 'worst', letter: string) =>
    `${which === 'best' ? 'Bestes' : 'Schlechtestes'} Quadrat, Zone ${letter}`,
  placeGone: 'Ein Ort, der nicht mehr hier ist',
  unnamed: 'Stelle nicht beschrieben',
  lastRead: (day: string) => `Gemessen ${day}`,
  agreedShort: 'Vereinbart',
  fromAgreed: 'Gegenüber dem vereinbarten Farbton',
  fromAgreedNamed: (name: string) => `Gegenüber dem vereinbarten Farbton „${name}“`,
  noAgreed: 'Bis dahin war dafür kein Farbton vereinbart.',
  since: (day: string) => `Seit ${day}`,
  sinceBefore: 'Seit der Messung davor',
  firstReading: 'Das ist die erste Messung dieser Stelle.',
  units: (value: number, low: number, high: number) =>
    `${tenths(value)} Einheiten (${tenths(low)} bis ${tenths(high)})`,
  direction,
  within: 'Nichts Auffälliges: Ein erneutes Aufsetzen des Geräts kann ebenso viel ausmachen.',
  notTold: 'Kein Unterschied wird genannt.',
  why: 'Worauf das beruht',
  whyHide: 'Grundlagen verbergen',
  readAgain: 'Diese Stelle wieder messen',
  agreeOn: 'Letzte Messung als vereinbarten Farbton nehmen',
  chart: 'Abstand vom vereinbarten Farbton',
  chartLabel: (n: number, from: string, to: string) =>
    `Abstand vom vereinbarten Farbton in ${number(n, 0)} Messungen: ${from} Einheiten in der ersten, ${to} in der letzten.`,
  table: 'Alle Messungen dieser Stelle',
  tableHide: 'Messungen verbergen',
  columns: {
    day: 'Tag',
    figures: 'L*, a*, b*',
    agreed: 'Zum vereinbarten',
    before: 'Zur Messung davor',
    how: 'Wie gemessen wurde',
  },
  figure: (value: number) => number(value, 2).replace('-', '−'),
  figures: ({ L, a, b }: { readonly L: number; readonly a: number; readonly b: number }) =>
    `${signed(L)}; ${signed(a)}; ${signed(b)}`,
  placings: (n: number, spread: number | null) =>
    `${n === 1 ? '1 Aufsetzung' : `${number(n, 0)} Aufsetzungen`}${spread === null ? '' : `, Streuung ${tenths(spread)}`}`,
  inBrief: (value: number, low: number, high: number) => `${tenths(value)} (${tenths(low)} bis ${tenths(high)})`,
  notToldShort: (why: readonly string[]) => `nicht genannt; anders: ${list(why)}`,
  notToldAnew: 'nicht genannt: seither eine andere Oberfläche',
  differs: {
    'colour: other illuminant': 'Lichtart',
    'colour: other observer': 'Beobachter',
    'colour: other geometry': 'Geometrie',
    'colour: other aperture': 'Öffnung',
    'colour: other wetness': 'Nässe',
  },
  dash: '–',
  change: 'Ändern',
  editReading: (day: string) => `Messung vom ${day} ändern`,
  swatch: (what: string) => `Farbe, so nah dieser Bildschirm sie zeigen kann: ${what}`,
  pair: (left: string, right: string) =>
    `${left} und ${right}, Kante an Kante, so nah dieser Bildschirm sie zeigen kann`,
  notExact: 'Jenseits dessen, was ein Bildschirm zeigen kann: Gezeichnet ist die nächstliegende Farbe.',

  key: 'Was die Werte bedeuten',
  keyText: (n: { readonly seen: string; readonly large: string; readonly placings: string }): readonly string[] => [
    'L* ist die Helligkeit, von 0 (Schwarz) bis 100 (Weiß); a* reicht von Grün (unter 0) bis Rot, b* von Blau (unter 0) bis Gelb.',
    `Ein Unterschied wird in Einheiten von CIEDE2000 genannt. Als Faustregel sieht ein geübtes Auge gerade eben ${n.seen} Einheit, wo zwei gleichmäßige Flächen bei gutem Licht aneinanderstoßen; patinierte Bronze ist ungleichmäßig, und dort braucht es mehr. Über ${n.large} sagt der Wert „weit auseinander“ und nicht mehr, wie weit.`,
    `Die Spanne (90 %) kommt daher, wie weit einzelne Aufsetzungen auseinanderliegen. ${n.placings} oder mehr Aufsetzungen an einer Stelle machen sie enger.`,
    'Kein Unterschied wird genannt, wo Lichtart, Beobachter, Geometrie, Öffnung oder Nässe verschieden sind oder die Oberfläche dazwischen eine andere wurde. Nichts lässt sich vom einen auf das andere umrechnen.',
    'Die hier gezeichneten Farben sind so nah, wie ein Bildschirm oder Drucker kommt. Sie dienen zum Wiedererkennen, nicht zum Abmustern.',
    'Ein Wachs macht eine Oberfläche dunkler und glänzender. Ein Unterschied kann allein der der Beschichtung sein.',
  ],

  sheet: {
    add: 'Messung eintragen',
    edit: 'Messung ändern',
    save: 'Messung speichern',
    saved: 'Die Messung ist gespeichert.',
    edited: 'Die Änderungen sind gespeichert.',
    remove: 'Entfernen',
    removed: 'Die Messung ist entfernt. Rückgängig holt sie zurück.',
    spot: 'Stelle',
    anotherSpot: 'Eine noch nicht gemessene Stelle',
    place: 'Wo am Werk',
    position: 'Genau wo',
    positionHint:
      'Damit dort wieder aufgesetzt werden kann: „drittes Loch der Schablone“, „eine Handbreit links der Naht, auf Höhe der Linse“.',
    day: 'Tag',
    dayMissing: 'Wählen Sie den Tag der Messung.',
    placings: 'Aufsetzungen',
    placingsHint:
      'Eine Zeile für jedes Aufsetzen des Geräts: L*, a* und b* mit Leerzeichen dazwischen, zum Beispiel 32,1 −4,2 9,8',
    placingsMissing: 'Schreiben Sie mindestens eine Zeile mit drei Werten.',
    lineWrong: (line: number) =>
      `Zeile ${line} besteht nicht aus drei Werten mit Leerzeichen dazwischen. Sehen Sie sie noch einmal an.`,
    lineOut: (line: number) =>
      `Zeile ${line} enthält einen Wert, den keine Oberfläche hat: L* liegt zwischen 0 und 100. Achten Sie auf Komma und Vorzeichen.`,
    readBack: 'Wie verstanden',
    mean: 'Mittel',
    stray: (line: number) =>
      `Zeile ${line} liegt weit von den anderen. Ist sie richtig eingetippt? Wenn ja, saß das Gerät vielleicht schief: Setzen Sie es noch einmal auf.`,
    note: 'Notiz',
  },
  way: {
    title: 'Wie gemessen wurde',
    titleHint:
      'Lichtart, Beobachter und Geometrie stehen auf dem Ausdruck oder im Menü des Geräts. Ohne sie lässt sich keine Messung gegen eine andere halten.',
    same: (day: string) => `Auf dieselbe Weise wie am ${day}`,
    other: 'Auf andere Weise',
    missing: 'Geben Sie an, wie gemessen wurde: Lichtart, Beobachter und Geometrie.',
    chooseWay: 'Geben Sie an, ob auf dieselbe Weise gemessen wurde.',
    illuminant: 'Lichtart',
    illuminants: {
      D65: 'Tageslicht, die übliche',
      D50: 'Druck und Fotografie',
      C: 'Älteres Tageslicht',
      A: 'Glühlampenlicht',
    },
    observer: 'Beobachter',
    observers: { '2': 'Kleines Feld, 1931', '10': 'Großes Feld, 1964' },
    observerName: (degrees: string) => `${degrees}°`,
    geometry: 'Geometrie',
    geometries: {
      'd/8 included': { name: 'd/8, Glanz eingeschlossen', what: 'Kugel; auch SCI, di:8' },
      'd/8 excluded': { name: 'd/8, Glanz ausgeschlossen', what: 'Kugel; auch SCE, de:8' },
      '45/0': { name: '45/0', what: 'Auch 0/45, 45°a:0°' },
    },
    aperture: 'Öffnung (Messfleck, Durchmesser)',
    apertureWrong: 'Geben Sie die Öffnung in Millimetern ein, zum Beispiel 8.',
    surface: 'Oberfläche',
    surfaces: { dry: 'Trocken', damp: 'Feucht', wet: 'Nass' },
    instrument: 'Gerät',
    instrumentHint: 'Typ und Nummer, damit dasselbe wieder verlangt werden kann.',
    calibration: 'Weißabgleich',
    calibrationHint: 'Wann, und mit welchem Weißstandard.',
    summary: (parts: readonly string[]) => parts.join(' · '),
    mm: (aperture: string) => `${aperture} mm`,
    noMatch: (agreed: boolean, earlier: boolean) =>
      agreed && earlier
        ? 'So gemessen, lässt es sich weder gegen den vereinbarten Farbton noch gegen die Messungen davor halten'
        : `So gemessen, lässt es sich nicht gegen ${agreed ? 'den vereinbarten Farbton' : 'die Messungen davor'} halten`,
    askNow: 'Solange das Gerät hier ist, lässt es sich anders einstellen.',
  },
  agreedSheet: {
    add: 'Vereinbarten Farbton eintragen',
    edit: 'Vereinbarten Farbton ändern',
    save: 'Farbton speichern',
    saved: 'Der vereinbarte Farbton ist gespeichert.',
    edited: 'Die Änderungen sind gespeichert.',
    remove: 'Entfernen',
    removed: 'Der vereinbarte Farbton ist entfernt. Rückgängig holt ihn zurück.',
    name: 'Bezeichnung',
    nameHint: '„Braun der Musterplatte 3, gewachst“.',
    nameMissing: 'Geben Sie ihm einen Namen.',
    by: 'Vereinbart von',
    byHint:
      'Funktionen, zum Beispiel Eigentümer und Nachlass. Lassen Sie Personennamen weg, wenn dies weitergegeben wird.',
    byMissing: 'Geben Sie an, wer vereinbart hat.',
    day: 'Vereinbart am',
    zone: 'Gilt für',
    value: 'Seine Werte, L*, a* und b*',
    valueHint: 'Wie ein Gerät sie an der Musterplatte oder der fertigen Oberfläche gemessen hat: 28,4 7,9 9,6',
    valueWrong: 'Schreiben Sie drei Werte mit Leerzeichen dazwischen.',
    kept: 'Wo die Musterplatte aufbewahrt wird',
    note: 'Notiz',
  },
};
