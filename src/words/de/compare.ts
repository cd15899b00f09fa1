import type { compare as english } from '../en/compare';
import type { Same } from '../tongue';

type Which = 'earlier' | 'later';
/** "dem früheren Foto": after "auf". */
const onPhoto = (which: Which): string => (which === 'earlier' ? 'dem früheren Foto' : 'dem späteren Foto');
const surfaceOf = (sort: 'green' | 'sound'): string => (sort === 'green' ? 'Grün' : 'intakte Oberfläche');

export const compare: Same<typeof english> = {
  title: 'Fotos vergleichen',
  lead: 'Dieselbe Stelle in zwei Jahren, erst nebeneinander, dann aufeinandergelegt.',
  back: 'Zurück zum Werk',
  missing: 'Diese Skulptur ist nicht auf diesem Gerät',
  photoMissing: 'Eines dieser Fotos steht nicht mehr in den Einträgen dieses Werks. Wählen Sie andere.',

  none: 'Noch nichts zu vergleichen',
  noneWhat:
    'Nötig sind zwei Fotos vom selben Standpunkt oder vom selben Quadrat. Setzen Sie Standpunkte, und gehen Sie einmal im Jahr die Aufnahmeliste durch.',
  toStations: 'Standpunkte',
  toPhotos: 'Fotos',
  toStrip: 'Alle Jahre in einer Reihe',

  station: (letter: string, aim: string) => `Standpunkt ${letter}: ${aim}`,
  square: (which: 'best' | 'worst', zone: string) =>
    `${which === 'best' ? 'Bestes' : 'Schlechtestes'} Quadrat, ${zone}`,
  from: 'Aufgenommen von',
  earlier: 'Früheres Foto',
  later: 'Späteres Foto',
  same: 'Das ist zweimal dasselbe Foto. Wählen Sie für eines ein anderes.',
  seriesOption: (name: string, n: number) => `${name} (${n === 1 ? '1 Foto' : `${n} Fotos`})`,
  alone: (n: number) =>
    n === 0 ? 'Von hier gibt es noch kein Foto.' : 'Von hier gibt es ein Foto; zum Vergleichen sind zwei nötig.',

  taken: (day: string, light: string | undefined, wet: string | undefined, washed: string | undefined) =>
    [day, light, wet, washed].filter(Boolean).join(', '),
  lights: {
    'open shade': 'offener Schatten',
    overcast: 'bedeckt',
    sun: 'in der Sonne',
    artificial: 'Lampe oder Blitz',
  },
  altEarlier: (day: string) => `Das frühere Foto, ${day}`,
  altLater: (day: string) => `Das spätere Foto, ${day}`,
  unlike: 'Diese beiden wurden nicht gleich aufgenommen',
  alikeUnknown: 'Nicht bekannt, ob sie gleich aufgenommen wurden',

  lay: 'Das frühere Foto auf das spätere legen',
  layLead:
    'Tippen Sie eine Stelle auf dem einen Foto an, dann dieselbe auf dem anderen: einen Niet, eine Ecke, einen Buchstaben, den Fuß des Sockels. Wählen Sie Stellen weit auseinander und Dinge, die sich nicht verändern. Grün gehört nicht dazu.',
  layAgain: 'Die Paare noch einmal ansehen',
  layDone: 'Paare verbergen',
  howMany: (pairs: number, needed: number) =>
    pairs < needed ? `${pairs} von ${needed} Paaren` : `${pairs} Paare; ${needed} genügen, mehr sind genauer`,
  next: {
    either: (n: number) => `Paar ${n}: Tippen Sie eine Stelle auf einem der Fotos an.`,
    earlier: (n: number) => `Paar ${n}: jetzt dieselbe Stelle auf dem früheren Foto.`,
    later: (n: number) => `Paar ${n}: jetzt dieselbe Stelle auf dem späteren Foto.`,
    chosen: (n: number) => `Paar ${n} ist gewählt: Tippen Sie eines der Fotos an, um es dort zu berichtigen.`,
  },
  place: (n: number, which: Which) => `Paar ${n} auf ${onPhoto(which)} setzen`,
  pair: (n: number) => `Paar ${n}`,
  pairsTable: 'Paare',
  off: 'Abweichung',
  offWhat: 'Wie weit jedes von der Stelle liegt, an die die anderen es setzen, als Anteil der Fotobreite.',
  change: (n: number) => `Paar ${n} berichtigen`,
  leave: (n: number) => `Paar ${n} lassen, wie es ist`,
  remove: (n: number) => `Paar ${n} entfernen`,
  forget: 'Das halbe Paar verwerfen',
  kind: 'Wie es bewegt werden darf',
  kinds: {
    similarity: 'Gedreht und in der Größe geändert',
    affine: 'Auch gestreckt',
    homography: 'Als schräge Ebene',
  },
  kindDetails: {
    similarity: '4 Paare. Der übliche Weg: dieselbe Stelle, die Kamera etwas anders gehalten.',
    affine: '5 Paare. Wo die Kamera schief gehalten wurde.',
    homography: '6 Paare. Nur für nahezu ebene Oberflächen: eine Tafel, eine Tischplatte.',
  },
  unknownSize: 'Die Größe eines dieser Fotos ist nicht bekannt; es lässt sich nicht auf das andere legen.',

  verdicts: {
    same: 'Sie liegen gut genug für eine Veränderungskarte aufeinander',
    'blink only': 'Sie liegen nur grob aufeinander',
    'not the same station': 'Nicht derselbe Standpunkt',
  },
  notYet: 'Noch nicht aufeinandergelegt',
  cannot: 'Mit diesen Paaren lässt es sich nicht legen',

  look: 'Ansehen',
  ways: { beside: 'Nebeneinander', wipe: 'Wischen', blink: 'Wechseln', change: 'Veränderungskarte' },
  onlyBeside: 'Nur nebeneinander, bis das frühere Foto auf dem späteren liegt.',

  wipe: 'Wie viel vom früheren Foto zu sehen ist, von links',
  wipeLess: 'Weniger vom früheren',
  wipeMore: 'Mehr vom früheren',
  wipeAt: (percent: string) => `${percent} früher, der Rest später`,
  blinkStart: 'Wechseln',
  blinkStop: 'Anhalten',
  blinkTo: (which: Which) => (which === 'earlier' ? 'Das frühere zeigen' : 'Das spätere zeigen'),
  blinkShown: (which: Which, day: string) => `${which === 'earlier' ? 'Früher' : 'Später'}: ${day}`,
  blinkStill: 'Dieses Gerät ist so eingestellt, dass es Bewegung meidet; die Fotos wechseln nur bei Ihrer Berührung.',

  changeLead:
    'Wo hinzusehen ist, kein Urteil: Pixel, die nach den auf jedem Foto angetippten Stellen als Grün gelten. Auch Licht, Wasser und Schmutz können als Grün gelten. Die Werte sind Anteile am gewählten Teil dieses Fotos, und kein Foto misst Farbe.',
  part: 'Teil des Fotos',
  wholePhoto: 'Das ganze Foto',
  tapOn: (which: Which) => `Stellen auf ${onPhoto(which)}`,
  tapWhat: 'Drei grüne Stellen und drei mit intakter Oberfläche auf jedem Foto, denn ihr Licht ist verschieden.',
  sort: 'Angetippt wird',
  sorts: { green: 'Grün', sound: 'Intakt' },
  tapDoes: (sort: 'green' | 'sound', which: Which) => `Stelle auf ${onPhoto(which)} antippen: ${surfaceOf(sort)}`,
  tapped: (green: number, sound: number) => `${green} grün, ${sound} intakt`,
  fromMask: 'Wie für die auf diesem Foto gemessene Maske angetippt.',
  spotsTooAlike: 'Diese Stellen unterscheiden Grün nicht von intakter Oberfläche',
  takeBack: 'Letzte Stelle zurücknehmen',
  spots: 'Angetippte Stellen',
  editSpots: 'Stellen neu antippen',
  spotsDone: 'Stellen verbergen',
  clearSpots: 'Diese Stellen löschen',
  working: 'Die Veränderungskarte wird berechnet …',
  noMap: 'Keine Veränderungskarte',
  map: 'Veränderungskarte',
  mapAlt: (day: string) => `Das spätere Foto, ${day}, mit dem, was sich seither verändert hat, darübergezeichnet`,
  kindsOfChange: {
    newly: 'Neu grün',
    noLonger: 'Nicht mehr grün',
    still: 'Noch grün',
    neither: 'In keinem grün',
    leftOut: 'Weggelassen: Glanz, tiefer Schatten oder nicht auf beiden Fotos',
  },
  shareOfPart: 'Anteil an diesem Teil',
  range: 'Spanne',
  rangeWhat:
    'Die Spanne ist, was der Anteil wäre, wenn die beiden doppelt so weit auseinander lägen oder genau aufeinander.',

  strip: {
    title: (name: string) => name,
    over: 'Alle Jahre in einer Reihe',
    lead: (n: number, first: string, last: string) =>
      n === 1 ? `1 Foto, ${first}.` : `${n} Fotos, ${first} bis ${last}.`,
    missing: 'Dieser Standpunkt ist nicht auf diesem Gerät',
    empty: 'Von diesem Standpunkt noch kein Foto',
    how: 'Zeigen',
    asTaken: 'Wie aufgenommen',
    laid: 'Auf das neueste gelegt',
    notLaid: 'Nicht auf das neueste gelegt: gezeigt wie aufgenommen.',
    laidBy: (share: string) => `Auf das neueste gelegt, Abweichung ${share} der Breite.`,
    latest: 'Das neueste',
    roughly: (share: string) => `Liegt nur grob auf dem neuesten, Abweichung ${share} der Breite.`,
    apart: 'Nicht derselbe Standpunkt wie das neueste: gezeigt wie aufgenommen.',
    others: (facts: string) => `Nicht wie die anderen: ${facts}.`,
    ruled: (facts: string) => `Nicht nach der Vorgabe des Standpunkts: ${facts}.`,
    notSaid: 'Licht und Oberfläche nicht angegeben.',
    withBefore: (day: string) => `Vergleichen mit ${day}`,
    withLatest: 'Vergleichen mit dem neuesten',
    alt: (name: string, day: string) => `${name}, ${day}`,
  },
};
