import type { paperCondition as english } from '../en/paperCondition';
import type { Same } from '../tongue';
import { unitOf } from '../units';

export const paperCondition: Same<typeof english> = {
  title: 'Zustandsbericht',
  reader: 'Restaurierung, Akte, Leihgeber, Versicherung',

  noRound: 'Zu diesem Werk gibt es noch keinen Rundgang. Über seinen Zustand ist nichts festgehalten.',
  allLooked: (zones: string, day: string) => `Am ${day} wurden alle ${zones} Zonen angesehen.`,
  oneLooked: (day: string) => `Am ${day} wurde die eine Zone des Werks angesehen.`,
  noneLooked: (day: string) => `Am ${day} wurde keine Zone angesehen.`,
  someLooked: (seen: string, zones: string, share: string, day: string) =>
    `Am ${day} wurden ${seen} von ${zones} Zonen angesehen: ${share} der Fläche. Die übrigen stehen hier; im Weiteren wird über sie nichts gesagt.`,
  leftZone: (zone: string, area: string, why: string) => `${zone}, ${area}: ${why}`,
  leftWhy: {
    carried: (day: string) => `aus dem Rundgang vom ${day} übernommen, nicht neu beurteilt`,
    carriedPlain: 'aus einem früheren Rundgang übernommen, nicht neu beurteilt',
    partly: 'teilweise aus einem früheren Rundgang übernommen: kein eigener Index',
    notVisited: 'in diesem Rundgang nicht aufgesucht',
  },
  open: 'Der Rundgang ist noch nicht abgeschlossen: Zonen können noch hinzukommen.',
  surfaceOnly:
    'Angesehen wurde die von außen sichtbare Oberfläche. Nichts wurde geöffnet, beprobt oder geprüft: Gusskern, Armierung, Befestigungen und Fundament gehören nicht zu dieser Untersuchung.',
  noDangers: 'Am Tag, an dem dieses Papier gemacht wurde, steht in den Einträgen keine Gefahr für Personen offen.',

  what: 'Das Werk',
  facts: {
    number: 'Nummer',
    titleOf: 'Titel',
    maker: 'Urheber',
    date: 'Datierung',
    materials: 'Material',
    dimensions: 'Maße',
    place: 'Standort',
    zones: 'Zonen',
    inserts: 'Einlagen',
    note: 'Notiz',
  },
  zonesOf: (zones: string, area: string) => `${zones}, zusammen ${area}`,
  zoneCount: (n: number, figure: string) => (n === 1 ? '1 Zone' : `${figure} Zonen`),

  survey: 'Diese Untersuchung',
  purpose: 'Zweck',
  purposeHint: (drafted: string) =>
    `Warum und für wen untersucht wurde. Bleibt das Feld leer, steht im Papier: ${drafted}`,
  purposes: {
    annual: 'Jährliche Untersuchung des Zustands. Nach ihr werden Pflege und nächste Kontrollblicke geplant.',
    autumn: 'Zweite Untersuchung des Jahres, vor dem Winter.',
    'before treatment': 'Zustand des Werks vor Beginn einer Behandlung.',
    'after treatment': 'Zustand des Werks nach einer Behandlung: Damit werden spätere Untersuchungen verglichen.',
    incident: 'Zustand des Werks nach einem Vorfall.',
  },
  examiner: 'Untersucht von',
  examinerNot: 'nicht angegeben',
  kind: 'Rundgang',
  roundOf: (type: string, day: string) => `${type}, ${day}`,
  surface: 'Oberfläche',
  wet: { dry: 'trocken', damp: 'feucht', wet: 'nass' },
  washed: { 'before wash': 'vor dem Waschen', 'after wash': 'nach dem Waschen' },
  surfaceOf: (wet: string, washed: string) => `${wet}, ${washed}`,
  light: 'Licht',
  lightHint: 'Offener Schatten, bedeckt, tiefe Sonne; Kunstlicht und woher.',
  lights: { 'open shade': 'offener Schatten', overcast: 'bedeckt', sun: 'Sonne', artificial: 'Kunstlicht' },
  lightOfPhotos: (lights: string) => `${lights}, nach den Angaben zu den Fotos`,
  notRecorded: 'nicht festgehalten',
  reach: 'Erreicht',
  reachOf: (how: string, zones: string) => `${how}: ${zones}`,
  looking: 'Vorgehen',
  byEye:
    'Nach Augenschein, Zone für Zone in der Reihenfolge des Rundwegs; Bedeckung im Vergleich mit gezeichneten Feldern bekannter Bedeckung.',
  ownEye: 'Frühere Werte blieben verborgen, bis der jeweils neue feststand.',
  documents: 'Verwendete Unterlagen',
  docRounds: (n: number, figure: string, first: string, last: string) =>
    n === 1 ? `ein früherer Rundgang, ${first}` : `${figure} frühere Rundgänge, ${first} bis ${last}`,
  docLog: (n: number, figure: string) => (n === 1 ? '1 Eintrag des Logbuchs' : `${figure} Einträge des Logbuchs`),
  docPhotos: (n: number, figure: string) => (n === 1 ? '1 Foto dieses Rundgangs' : `${figure} Fotos dieses Rundgangs`),
  docNone: 'Keine: Dies ist die erste Untersuchung.',
  roundNote: 'Notiz zum Rundgang',

  condition: 'Zustand',
  summary: 'In wenigen Worten',
  summaryHint: 'Was am meisten zählt, in eigenen Worten. Bleibt das Feld leer, kommt das Papier ohne diese Angabe aus.',
  index: 'Zustandsindex',
  indexOf: (value: string, range: string) => `${value} (${range})`,
  indexNone: 'keiner: Es wurde keine Zone angesehen',
  indexHow: (share: string, scale: string) =>
    `0 bis 100, 100 ist intakt; Mittel der Zonen nach Fläche und Bedeutung, über ${share} der Fläche. In Klammern die 90-%-Spanne aus der Unsicherheit geschätzter Bedeckung und des Tageslichts. Skala ${scale}.`,
  active: { green: 'Grün, nicht in Ruhe', bare: 'Blankes Metall, nicht in Ruhe', scale: 'Kalkbelag, nicht in Ruhe' },
  activeHow: 'Bedeckung mal Fläche, summiert über die angesehenen Zonen; 90-%-Spanne aus beiden Unsicherheiten.',
  weakest: 'Schwächste Zone',
  weakestOf: (zone: string, value: string, range: string) => `${zone}: ${value} (${range})`,
  weakestHow: 'Die Zone mit dem niedrigsten Index: Ein Mittel kann sie verdecken. 90-%-Spanne nur aus der Bedeckung.',

  classes: 'Klassen des ganzen Werks',
  classColumns: {
    of: 'Klasse',
    proposed: 'Nach der Regel vorgeschlagen',
    set: 'Von einer Person gesetzt',
    why: 'Warum die Regel sie vorschlägt',
  },
  classNames: { condition: 'Zustand', urgency: 'Dringlichkeit', recommendation: 'Empfehlung' },
  classOf: (id: string, name: string) => `${id}, ${name}`,
  classNone: 'keine',
  classNotSet: 'nicht gesetzt',
  classSetBy: (name: string, by: string) => `${name}. Gesetzt von ${by}`,
  whyHighest: (zones: string) => `Die höchste unter den Zonen: ${zones}.`,
  whyWeakest: (zones: string) => `Das Ganze ist höchstens eine Klasse besser als seine schwächste Stelle: ${zones}.`,
  classesHow:
    'Klassen nach DIN EN 16096:2012, in eigenen Worten. Eine Regel schlägt sie aus den Befunden vor; was eine namentlich genannte Person setzt, geht vor. Sie sagen, wie stark Anzeichen sind, wie bald und welche Art von Pflege gefragt ist. Sie nennen keine Ursache und schreiben keine Behandlung vor.',

  zones: 'Zone für Zone',
  zoneColumns: { zone: 'Zone', area: 'Fläche', index: 'Index', classes: 'CC UC RC', seen: 'Was gesehen wurde' },
  zoneLies: (lie: string, reach: string) => [lie, reach].filter(Boolean).join('; '),
  nothing: 'Angesehen, ohne Befund.',
  notJudged: 'In diesem Rundgang nicht beurteilt: siehe Anfang des Papiers.',
  beading: (how: string) => `Wasser auf der Oberfläche: ${how}.`,
  finding: (parts: readonly string[]) => `${parts.join(', ')}.`,
  origins: { dirt: 'für Schmutz gehalten', stain: 'Fleck von oben', metal: 'im Metall' },
  cover: (share: string, low: string, high: string) => `${share} der Zone (${low} bis ${high})`,
  count: { one: 'eins', 'two to five': 'zwei bis fünf', more: 'sechs oder mehr' },
  cleared: 'gesucht, nicht mehr vorhanden',
  carried: 'übernommen, nicht neu beurteilt',
  zoneHow: (areas: string) =>
    `Fläche in ${unitOf('area')} mit ihrer 90-%-Spanne: ${areas}. Index 0 bis 100, 100 ist intakt, mit seiner 90-%-Spanne nur aus der Bedeckung. Bedeckung ist der bedeckte Anteil der Zone mit seiner 90-%-Spanne. CC Zustandsklasse, UC Dringlichkeitsklasse, RC Empfehlungsklasse; * von einer Person gesetzt, sonst nach der Regel vorgeschlagen.`,
  areaMethods: {
    typed: 'wie eingegeben',
    solids: 'aus einfachen Körpern, über die Form gelegt',
    strips: 'aus Umfang und Höhe, Streifen für Streifen',
    outline: 'aus dem Umriss auf einem Foto',
  },

  views: 'Gekennzeichnete Ansichten',
  noViews: 'Noch ist keine Zone auf einem Bild des Werks eingezeichnet.',
  hatchKey: 'Schraffur',
  hatch: {
    0: 'angesehen, kein Befund mit Fläche',
    1: 'unter 5 %',
    2: '5 bis 25 %',
    3: '25 bis 50 %',
    4: 'über 50 %',
    open: 'in diesem Rundgang nicht beurteilt',
  },
  hatchHow:
    'Die Schraffur zeigt die größte Bedeckung eines einzelnen Befunds der Zone in diesem Rundgang, Schmutz ausgenommen. Gezeichnet ist der Umriss der Zone, nicht der Ort eines Befunds in ihr.',
  notDrawn: (zones: string) => `Auf keiner Ansicht: ${zones}.`,

  photos: 'Fotos dieses Rundgangs',
  noPhotos: 'Zu diesem Rundgang gehört kein Foto.',
  photoMore: (n: number, figure: string) =>
    n === 1
      ? '1 weiteres Foto dieses Rundgangs liegt im Archiv.'
      : `${figure} weitere Fotos dieses Rundgangs liegen im Archiv.`,
  photoRoles: {
    finding: 'Befund',
    zone: 'Zone',
    elevation: 'Ansicht',
    look: 'Kontrollblick',
    station: 'Standpunkt',
    sentinel: 'Quadrat',
    other: 'Foto',
  },
  photoSquare: { best: '10 mal 10 cm, beste Stelle', worst: '10 mal 10 cm, schlechteste Stelle' },
  photoFrame: (metres: string) => `Bildbreite etwa ${metres}`,
  photoNoScale: 'kein Maßstab festgehalten',
  photosHow:
    'Maßstab: Quadrate messen 10 mal 10 cm; die Bildbreite ist aus einer gemessenen Länge derselben Ansicht berechnet und gilt nur für deren Tiefe.',

  comparison: 'Vergleich mit dem letzten gleichartigen Rundgang',
  comparisonNone: 'Es gibt keinen früheren Rundgang zum Vergleich.',
  comparisonUnlike: (day: string) =>
    `Der letzte Rundgang vom ${day} war von anderer Art, oder die Oberfläche war in anderem Zustand. Seine Zahlen werden hier nicht verglichen:`,
  comparedWith: (type: string, day: string, surface: string) =>
    `Verglichen mit dem Rundgang vom ${day} (${type}, ${surface}), dem letzten gleicher Art und gleichen Zustands.`,
  comparedColumns: {
    zone: 'Zone',
    before: 'Index damals',
    now: 'Index heute',
    least: 'Zählt ab',
    verdict: 'Urteil',
  },
  wholeWork: 'Das ganze Werk',
  comparedHow:
    'Index mit seiner 90-%-Spanne. „Zählt ab“ ist der kleinste Unterschied in Punkten, der bei der Unsicherheit beider Rundgänge als Veränderung gilt.',
  changed: 'Stärker verändert, als beide Unsicherheiten erklären',
  changedNone: 'Nichts hat sich sicher verändert.',
  unsure: 'Vielleicht verändert, nicht sicher',
  indexChange: (name: string, verdict: string, before: string, now: string) =>
    `${name}: ${verdict}, Index damals ${before}, heute ${now}.`,
  changeOf: (zone: string, kind: string, verdict: string, more: string) =>
    `${zone}: ${kind}. ${verdict}${more ? `: ${more}` : ''}.`,
  now: (share: string) => `jetzt ${share} der Zone`,
  namedFrom: (what: 'severity' | 'activity' | 'count', before: string, now: string) =>
    `${{ severity: 'Schwere', activity: 'Aktivität', count: 'Anzahl' }[what]} damals ${before}, heute ${now}`,
  fromTo: (before: string, now: string) => `von ${before} auf ${now} der Zone`,
  carriedOrNot: (carried: number, not: number) =>
    [
      carried > 0 && (carried === 1 ? '1 Befund wurde übernommen' : `${carried} Befunde wurden übernommen`),
      not > 0 && (not === 1 ? '1 war nicht zu vergleichen' : `${not} waren nicht zu vergleichen`),
    ]
      .filter(Boolean)
      .join('; '),
  noSureChange: (n: number) =>
    n === 1 ? '1 Befund zeigt keine sichere Veränderung.' : `${n} Befunde zeigen keine sichere Veränderung.`,
  byChance: (comparisons: number, expected: string) =>
    comparisons === 1
      ? `Es wurde ein Vergleich angestellt. Durch Zufall allein sähen etwa ${expected} davon verändert aus.`
      : `Es wurden ${comparisons} Vergleiche angestellt. Durch Zufall allein sähen etwa ${expected} davon verändert aus, obwohl sich nichts geändert hat.`,
  done: 'Zwischen den beiden Rundgängen getan',
  doneNone: 'Das Logbuch enthält nichts zwischen den beiden Rundgängen.',
  doneWhat: 'Es steht neben der Veränderung. Was sie verursacht hat, sagt es nicht.',

  earlier: 'Frühere Rundgänge',
  earlierColumns: { date: 'Datum', type: 'Rundgang', index: 'Index', seen: 'Angesehen' },
  earlierHow:
    'Index mit seiner 90-%-Spanne, über die jeweils angesehenen Zonen. „Angesehen“ ist der Anteil der Fläche.',

  seenIn: (kind: string, zones: string) => `${kind}: ${zones}.`,
  seenZone: (letter: string, share: string) => `${letter} ${share}`,
  seenNothing: 'In keiner der angesehenen Zonen wurde etwas gefunden.',
  thoughts: 'Gesehen und vermutet',
  thoughtBy: (by: string, day: string, source: string) => [by, day, source].filter(Boolean).join(', '),
  thoughtOf: (zone: string, statement: string) => `${zone}: ${statement}`,
  noThoughts: 'Zu diesem Werk hat niemand eine Vermutung aufgeschrieben.',
  thoughtsMore: (n: number, figure: string) =>
    n === 1 ? '1 ältere Vermutung liegt im Archiv.' : `${figure} ältere Vermutungen liegen im Archiv.`,

  signs: 'Unterschriften',
  signExaminer: 'untersucht',
  signReceiver: 'gelesen und zu den Akten genommen',
  lacks: {
    light: 'Das Licht des Tages ist nicht festgehalten: Sagen Sie es unten oder bei den Fotos.',
    surveyor: 'Es ist nicht gesagt, wer den Rundgang gemacht hat.',
    photos: 'Zu diesem Rundgang gehört kein Foto.',
    set: 'Keine Klasse des ganzen Werks ist von einer Person gesetzt: Der Bericht gibt wieder, was die Regel vorschlägt.',
    open: 'Der Rundgang ist noch nicht abgeschlossen.',
  },
};
