import type { carry as english } from '../en/carry';
import type { Same } from '../tongue';

const photos = (n: number, count = `${n}`): string => (n === 1 ? '1 Foto' : `${count} Fotos`);

export const carry: Same<typeof english> = {
  title: 'Mitgeben',
  lead: 'Die Bestandsaufnahme auf ein anderes Gerät bringen und wieder zurück. Nichts verlässt dieses Gerät, außer Sie geben es hier mit.',
  plain: 'Die Datei ist nicht verschlüsselt. Wer sie hat, kann sie lesen.',

  otherWays: 'Andere Wege',

  out: 'Mitgeben',
  make: 'Was mitgegeben wird',
  makes: {
    bag: 'Bestandsaufnahme und Fotos (eine Tasche)',
    survey: 'Bestandsaufnahme ohne Fotos',
    table: 'Befunde als Tabelle (CSV)',
  },
  makesWhat: {
    bag: 'Zum Aufbewahren: alles, mit einem Bericht, der ohne diese App zu lesen ist. Lässt sich wieder hereinholen.',
    survey: 'Klein: um ein anderes Gerät auf den neuesten Stand zu bringen. Lässt sich wieder hereinholen.',
    table: 'Für eine Tabellenkalkulation. Lässt sich nicht wieder hereinholen.',
  },
  prepares: { bag: 'Tasche vorbereiten', survey: 'Datei vorbereiten', table: 'Tabelle vorbereiten' },
  bagSize: (n: number, count: string, size: string) =>
    n === 0
      ? 'Kein Foto geht mit: nur die Bestandsaufnahme und ihre Papiere.'
      : `${photos(n, count)} ${n === 1 ? 'geht' : 'gehen'} mit (${size}), neben der Bestandsaufnahme und ihren Papieren.`,
  bagMissing: (n: number, count: string) =>
    n === 1
      ? 'Das Bild von 1 Foto ist nicht auf diesem Gerät und nicht in der Tasche.'
      : `Die Bilder von ${count} Fotos sind nicht auf diesem Gerät und nicht in der Tasche.`,
  bagDamaged: (n: number, count: string) =>
    n === 1
      ? '1 Bild auf diesem Gerät ist beschädigt und wurde weggelassen. Was zu tun ist, steht unter „Sicher aufbewahren“.'
      : `${count} Bilder auf diesem Gerät sind beschädigt und wurden weggelassen. Was zu tun ist, steht unter „Sicher aufbewahren“.`,
  photosInIt: (n: number, count: string, size: string) =>
    n === 0 ? 'Kein Foto ist darin.' : `${photos(n, count)} ${n === 1 ? 'ist' : 'sind'} darin (${size}).`,
  preparedBag: 'Die Tasche ist fertig und wurde vollständig zurückgelesen. Sie enthält:',
  bagLeft: 'Die Tasche liegt dort, wo Sie es gewählt haben, und wurde vollständig zurückgelesen. Sie enthält:',
  preparingBag: 'Die Tasche wird geschrieben …',
  readingBack: 'Sie wird zur Sicherheit zurückgelesen …',
  straight: 'Direkt in eine Datei schreiben',
  outLeft: 'Abgebrochen. Nichts davon wurde behalten.',
  outWhich: 'Was hineinkommt',
  outAll: 'Die ganze Sammlung',
  outSome: 'Nur einzelne Werke',
  outSomeNone: 'Wählen Sie mindestens eine Skulptur.',
  noSculptures: 'Es gibt noch keine Skulptur, die mitgegeben werden könnte.',
  leaveOut: 'Weglassen',
  without: {
    names: 'Namen von Personen',
    places: 'Standorte der Werke und Aufbewahrungsorte',
    access: 'Zugang: Schlüssel, Codes, Leitern, wo etwas liegt',
    'insert values': 'Werte von Einlagen',
    money: 'Geld: Preise, Angebote, Fonds, Spenden, Entscheidungen',
  },
  preparing: 'Die Datei wird vorbereitet …',
  prepared: 'Die Datei ist fertig. Sie enthält noch:',
  preparedNothing: 'Die Datei ist fertig und enthält keinen Eintrag.',
  preparedTable: 'Die Tabelle ist fertig.',
  holdKinds: {
    collection: 'Sammlung',
    scale: 'Gewichte',
    surveyor: 'Bearbeiter (Funktionen)',
    name: 'Namen von Personen',
    sculpture: 'Skulpturen',
    place: 'Standorte',
    access: 'Zugang',
    insert: 'Einlagen',
    insertValue: 'Werte von Einlagen',
    elevation: 'Ansichten',
    zone: 'Zonen',
    round: 'Rundgänge',
    visit: 'Besuche von Zonen',
    finding: 'Befunde',
    rerating: 'Erneut gefragte Zonen',
    classSet: 'Gesetzte Klassen, mit Namen',
    personCheck: 'Gefahrenmeldungen',
    look: 'Kontrollblicke',
    treatment: 'Logbucheinträge',
    interpretation: 'Vermutungen, mit Namen',
    photo: 'Fotos',
    outline: 'Umrisse von Zonen',
    runOff: 'Wasserläufe zwischen Zonen',
    station: 'Standpunkte',
    sentinel: 'Beobachtungsquadrate',
    photoFit: 'Aufeinandergelegte Fotos',
    measure: 'Auf Fotos gemessene Bedeckung',
    reading: 'Messungen mit Geräten',
    agreedColour: 'Vereinbarte Farbtöne, mit Namen',
    methodSheet: 'Was an einem Werk getan werden darf',
    weather: 'Messungen von Luft und Oberfläche',
    product: 'Mittel im Bestand',
    incident: 'Vorfälle',
    move: 'Umsetzungen und Leihgaben',
    groundsAgreement: 'Vereinbarungen mit der Gartenpflege',
    yearPlan: 'Jahrespläne, mit Geld',
    sitePlan: 'Geländeplan',
    yearVerdict: 'Jahresurteile, mit Namen',
    listTicks: 'Abgehakte Listen',
    task: 'Aufgaben',
    dueAnswered: 'Beantwortete Fälligkeiten',
    moneyRules: 'Wie mit Geld gerechnet wird',
    option: 'Möglichkeiten, mit Preisen',
    quote: 'Kostenvoranschläge, mit Namen',
    fund: 'Fonds',
    gift: 'Spenden, mit Namen',
    decision: 'Entscheidungen, mit Namen',
    tripwireAnswer: 'Antworten auf Auslöser',
    campaign: 'Maßnahmen',
    cause: 'Ursachen',
    quantities: 'Leistungsverzeichnisse',
    bid: 'Angebote, mit Namen und Preisen',
    bidCriteria: 'Gewichtung der Angebote, mit Namen',
    bidScore: 'Wertungsblätter zu Angeboten',
    completeness: 'Prüfungen von Unterlagen',
    approval: 'Freigaben, mit Namen',
    colourCard: 'Farbtonkarten',
    layer: 'Aufgetragene Schichten',
    hotDay: 'Tage mit Heißarbeit',
    insertCare: 'Was Einlagen vertragen',
    insertReading: 'Temperaturen an Einlagen',
    insertAfter: 'Einlagen nach der Hitze',
    accessSheet: 'Zugangsblätter',
    erasure: 'Was gelöscht wurde, und warum',
    holdRules: 'Regeln, wie lange Wachs hält',
    climate: 'Luft um die Werke',
    eyeCheck: 'Augenproben',
    paperText: 'Eigene Worte für Papiere',
    paperIssued: 'Ausgegebene Papiere, mit Namen',
    keptWhere: 'Wo etwas aufbewahrt wird',
    'persons named in entries': 'Einträge, die eine Person nennen',
    notes: 'Notizen in freien Worten',
    'sums of money in entries': 'Einträge mit einem Betrag: was bezahlt wurde, was eine Hebebühne am Tag kostet',
  },
  photosStay: (n: number) =>
    n === 0
      ? 'Kein Foto bleibt zurück.'
      : `${photos(n)} ${n === 1 ? 'bleibt' : 'bleiben'} auf diesem Gerät zurück: In dieser Datei reisen keine Fotos mit.`,
  keptAtHome: (n: number) =>
    n === 1
      ? 'In der Datei steht an 1 Stelle „zu Hause behalten“.'
      : `In der Datei steht an ${n} Stellen „zu Hause behalten“.`,
  freeText:
    'Notizen in freien Worten werden nicht durchsucht. Lesen Sie sie, bevor die Datei hinausgeht, wenn sie eine Person oder einen Ort nennen könnten.',
  save: 'Als Datei speichern',
  share: 'Teilen',
  download: 'Herunterladen',
  asText: 'Als Text zeigen',
  textWhat:
    'Kopieren Sie alles in eine Nachricht oder eine einfache Textdatei. Der Dateiname muss auf .survey.json enden.',
  copy: 'Text kopieren',
  copied: 'Kopiert.',
  copySelf: 'Markiert. Kopieren Sie es mit der Tastatur oder dem Menü.',
  saved: 'Die Datei ist gespeichert.',
  shared: 'Die Datei ist übergeben.',
  downloaded:
    'Die Datei wurde dem Browser übergeben. Prüfen Sie, dass sie bei Ihren Downloads liegt, bevor Sie sich darauf verlassen.',
  csvWhat: 'Eine Zeile je Befund, für eine Tabellenkalkulation. Lässt sich nicht wieder hereinholen.',

  in: 'Hereinholen',
  inWhat:
    'Öffnen Sie eine Bestandsdatei von einem anderen Gerät oder eine Tasche, die auch ihre Fotos enthält. Sie sehen, was sich ändern würde, bevor etwas gespeichert wird.',
  open: 'Bestandsdatei oder Tasche öffnen',
  readingFile: 'Die Datei wird gelesen …',
  step: (done: number, all: number) => `${done} von ${all}`,
  cannot: 'Diese Datei lässt sich nicht hereinholen',
  cannotWhat: 'Nichts wurde gespeichert.',
  doThis: (what: string) => `Was zu tun ist: ${what}`,
  preview: 'Was sich ändern würde',
  previewOf: (file: string) => `In ${file}`,
  nothingNew: 'Alles in dieser Datei ist schon hier.',
  unchangedRows: (n: number) =>
    n === 1
      ? 'Von 1 weiteren Teil der Datei ist schon alles hier.'
      : `Von ${n} weiteren Teilen der Datei ist schon alles hier.`,
  wholeCollection: 'Die Sammlung selbst',
  newSculpture: 'neu hier',
  columns: {
    sculpture: 'Skulptur',
    new: 'Neu',
    replaced: 'Ersetzt',
    twoVersions: 'Zwei Fassungen',
    photosComing: 'Fotos darin',
    photosMissing: 'Fotos fehlen',
  },
  other: 'Diese Datei kommt aus einer anderen Sammlung',
  otherWhat: (theirs: string, here: string) =>
    `Die Datei gehört zu „${theirs}“. Hier ist „${here}“. Sie werden nie stillschweigend zusammengelegt.`,
  otherTick: 'Ich weiß, dass es zwei Sammlungen sind, und will ihre Werke in einer haben',
  inventedIn: 'Die Datei enthält die erfundene Sammlung. Sie lässt sich nicht in eine echte hereinholen.',
  accept: 'Hereinholen',
  acceptWhat: 'Alles wird auf einmal gespeichert, oder nichts.',
  accepting: 'Wird gespeichert …',
  acceptingPhotos: 'Die Fotos werden gespeichert …',
  photosComing: (n: number, size: string) => `${photos(n)} ${n === 1 ? 'kommt' : 'kommen'} mit (${size}).`,
  litter: (n: number) =>
    n === 1
      ? '1 Datei, die ein Rechner in der Tasche hinterlassen hat, wurde übergangen.'
      : `${n} Dateien, die ein Rechner in der Tasche hinterlassen hat, wurden übergangen.`,
  accepted: (n: number, withPhotos = 0) =>
    `Hereingeholt: ${n === 1 ? '1 Eintrag' : `${n} Einträge`}${withPhotos === 0 ? '' : ` und ${photos(withPhotos)}`}.`,
  missingTitle: 'Fehlende Fotos',
  missing: (n: number) =>
    n === 1
      ? 'Die Bestandsaufnahme nennt 1 Foto, das nicht auf diesem Gerät ist. Es kommt mit einer Tasche oder mit seiner Bilddatei.'
      : `Die Bestandsaufnahme nennt ${n} Fotos, die nicht auf diesem Gerät sind. Sie kommen mit einer Tasche oder mit ihren Bilddateien.`,
  lookFor: 'In Bilddateien danach suchen',
  lookingFor: 'Die Dateien werden durchgesehen …',
  found: (placed: number, others: number) => {
    const found = placed === 1 ? '1 Foto hat seinen Platz gefunden.' : `${photos(placed)} haben ihren Platz gefunden.`;
    if (others === 0) return found;
    return `${found} ${
      others === 1
        ? '1 Datei wurde übergangen: Hier wartet nichts auf sie.'
        : `${others} Dateien wurden übergangen: Hier wartet nichts auf sie.`
    }`;
  },
  cancel: 'Abbrechen',
  left: 'Nichts wurde hereingeholt.',
  undo: 'Diesen Import zurücknehmen',
  undone: 'Der Import ist zurückgenommen. Alles ist wie zuvor.',
  readingOnly: 'Dieser Tab liest nur. Holen Sie die Datei in dem Tab herein, der schreibt.',

  toSettle: 'Zwei Fassungen zu klären',
  toSettleSome: (n: number) => (n === 1 ? '1 Eintrag hat zwei Fassungen.' : `${n} Einträge haben zwei Fassungen.`),
  toSettleRounds: (n: number) =>
    n === 1
      ? '1 Paar von Rundgängen ist vielleicht ein einziger Rundgang.'
      : `${n} Paare von Rundgängen sind vielleicht jeweils ein einziger Rundgang.`,
  goSettle: 'Klären',
};
