import type { papers as english } from '../en/papers';
import type { Same } from '../tongue';
import { roundType } from './roundType';

export const papers: Same<typeof english> = {
  title: 'Zustandserfassung',
  made: (day: string) => `Geschrieben am ${day}. Sie gibt wieder, was die Bestandsaufnahme an diesem Tag enthielt.`,
  invented: 'Erfunden: Diese Sammlung und ihre Werke gibt es nicht.',
  holds: (works: string, rounds: string, photos: string) => `${works}, ${rounds}, ${photos}.`,
  works: (n: number, figure: string) => (n === 1 ? '1 Werk' : `${figure} Werke`),
  rounds: (n: number, figure: string) => (n === 1 ? '1 Rundgang' : `${figure} Rundgänge`),
  photos: (n: number, figure: string) => (n === 1 ? '1 Foto' : `${figure} Fotos`),
  leftOut: (what: string) => `Beim Schreiben weggelassen: ${what}.`,
  leftOutNames: {
    names: 'Namen von Personen',
    places: 'Standorte der Werke',
    access: 'Schlüssel, Codes und Leitern',
    'insert values': 'Werte von Einlagen',
    money: 'Preise, Angebote, Fonds und Entscheidungen',
  },
  missing: (n: number, figure: string) =>
    n === 1
      ? '1 Foto ist genannt, dessen Bild beim Schreiben nicht vorlag.'
      : `${figure} Fotos sind genannt, deren Bilder beim Schreiben nicht vorlagen.`,
  readIt: 'Wie es zu lesen ist',
  readItWhat: [
    'Ein Werk wird Zone für Zone untersucht, etwa einmal im Jahr. Jeder Befund sagt, was gesehen wurde, auf welchem Anteil der Zone, wie schwer es ist und ob es weiterzugehen scheint.',
    'Der Index reicht von 0 bis 100; 100 ist intakt. Die Spanne dahinter kommt daher, wie grob Bedeckung nach Augenmaß geschätzt wird: In neun von zehn Fällen liegt der wahre Wert darin.',
    'Zonen, die nicht angesehen wurden, haben keinen Index und werden nie ergänzt. Aus einem früheren Rundgang übernommene Antworten sind gekennzeichnet und zählen nicht als gesehen.',
    'Was jemand über Ursachen vermutete, steht getrennt unter „Vermutet, nicht gesehen“.',
  ],
  care: 'Eine Untersuchung mit dem Auge ist keine Diagnose. Arbeiten an einem Denkmal, in der Höhe, mit Hitze, Lösemitteln oder heißem Wachs sind Sache von Personen, die dafür zugelassen und versichert sind, nach den Regeln des Ortes.',
  contents: 'Werke',
  papers: 'Papiere',
  papersWhat:
    'Jedes davon ist eine eigene Seite im Ordner papers neben dieser, zum Drucken gemacht. Alle sind Entwürfe: Niemand hat sie unterschrieben.',
  facts: {
    number: 'Nummer',
    maker: 'Urheber',
    date: 'Datierung',
    materials: 'Material',
    dimensions: 'Maße',
    place: 'Standort',
    access: 'Zugang',
    note: 'Notiz',
  },
  noRound: 'Noch kein Rundgang.',
  lastRound: (type: string, day: string) => `Rundgang vom ${day} (${roundType(type)})`,
  surface: (wet: string, washed: string) => `Oberfläche ${wet}, ${washed}.`,
  index: 'Index',
  range: (value: string, range: string) => `${value} (${range})`,
  notScored: 'kein Index',
  seen: (share: string) => `Angesehen: ${share} der Fläche.`,
  active: 'Nicht in Ruhe',
  activeNames: { green: 'Grün', bare: 'blankes Metall', scale: 'Kalkbelag' },
  zones: 'Zonen',
  columns: { zone: 'Zone', area: 'Fläche', index: 'Index', seen: 'Gesehen', finding: 'Befund' },
  states: {
    found: 'angesehen',
    nothing: 'angesehen, ohne Befund',
    carried: 'übernommen, nicht neu beurteilt',
    'not looked': 'nicht angesehen',
  },
  notVisited: 'nicht in diesem Rundgang',
  cleared: 'gesucht, nicht mehr vorhanden',
  carried: 'übernommen',
  count: { one: 'eins', 'two to five': 'zwei bis fünf', more: 'mehr als fünf' },
  of: (share: string, low: string, high: string) => `${share} der Zone (${low} bis ${high})`,
  settle: (n: number) =>
    n === 1
      ? 'Zu diesem Werk gibt es 1 Eintrag mit zwei Fassungen, die noch niemand geklärt hat. Die Zahlen nehmen die schlechtere.'
      : `Zu diesem Werk gibt es ${n} Einträge mit zwei Fassungen, die noch niemand geklärt hat. Die Zahlen nehmen jeweils die schlechtere.`,
  earlier: 'Frühere Rundgänge',
  roundColumns: { date: 'Datum', type: 'Art', index: 'Index', looked: 'Angesehen' },
  logbook: 'Logbuch',
  logColumns: { date: 'Datum', what: 'Was', where: 'Wo', details: 'Einzelheiten' },
  whole: 'das ganze Werk',
  look: (result: string) => `Kontrollblick: ${result}`,
  checks: 'Gefahrenmeldungen',
  checkOpen: 'offen',
  checkClosed: (day: string, by: string) => `geschlossen ${day} von ${by}`,
  inserts: 'Einlagen',
  insert: (count: string, material: string) => `${count} × ${material}`,
  thought: 'Vermutet, nicht gesehen',
  pictures: 'Fotos',
  picture: (role: string) => role,
  roles: {
    finding: 'Befund',
    zone: 'Zone',
    elevation: 'Ansicht',
    look: 'Kontrollblick',
    station: 'Standpunkt',
    sentinel: 'Quadrat',
    other: 'Foto',
  },
  notHere: 'Bild nicht in dieser Tasche',
  unknown: (n: number) =>
    n === 1
      ? '1 Eintrag einer Art, die diese Version nicht kennt, steht in survey.json und wird hier nicht wiedergegeben.'
      : `${n} Einträge von Arten, die diese Version nicht kennt, stehen in survey.json und werden hier nicht wiedergegeben.`,

  readme: {
    head: 'Zustandserfassung von Bronzen im Freien',
    of: (name: string, day: string) => `Sammlung: ${name}. Geschrieben am ${day}.`,
    what: 'Dieser Ordner ist in sich vollständig. Er lässt sich ohne das Programm lesen, das ihn geschrieben hat: Alles ist Text, Tabelle oder Bild.',
    files: 'Was hier liegt',
    rows: [
      [
        'data/report.html',
        'Die Bestandsaufnahme zum Lesen: Werke, Zonen, Rundgänge, Befunde, Fotos. In jedem Webbrowser zu öffnen.',
      ],
      ['data/papers/', 'Papiere zum Drucken und Übergeben, jedes eine eigene Seite für jeden Browser.'],
      ['data/findings.csv', 'Eine Zeile je Befund, für eine Tabellenkalkulation (RFC 4180, UTF-8).'],
      [
        'data/survey.json',
        'Die Bestandsaufnahme selbst, alles, was eingetragen wurde, und jede Berichtigung (JSON, RFC 8785).',
      ],
      ['data/survey.schema.json', 'Was in survey.json stehen darf, Feld für Feld (JSON Schema 2020-12).'],
      ['data/survey.jsonld', 'Werke, Beurteilungen und Behandlungen in Begriffen des CIDOC CRM (JSON-LD 1.1).'],
      ['data/photos/', 'Die Fotos, wie sie aus der Kamera kamen. Jedes heißt nach der SHA-256-Prüfsumme seiner Bytes.'],
      [
        'manifest-sha256.txt',
        'Die SHA-256-Prüfsumme jeder Datei unter data/, um zu sehen, dass nichts verändert wurde oder verloren ging.',
      ],
      ['bagit.txt, bag-info.txt', 'Was eine Tasche ist: BagIt 1.0, RFC 8493.'],
    ],
    check: 'Prüfen, ob sie vollständig ist',
    checkWhat:
      'In einem Terminal, in diesem Ordner: sha256sum -c manifest-sha256.txt. Jede Zeile muss auf OK enden. Auf anderen Systemen leistet jedes Programm für BagIt oder SHA-256 dasselbe.',
    json: 'Wie survey.json zu lesen ist',
    jsonWhat: [
      'Die Datei enthält eine Liste von Einträgen. Ein Eintrag wird nie geändert: Eine Berichtigung ist ein neuer Eintrag, dessen „replaces“ die älteren nennt.',
      'Der Stand eines Gegenstands ergibt sich aus den Einträgen, die kein anderer ersetzt. Sind es zwei, haben zwei Personen gesprochen, ohne einander zu sehen, und niemand hat es bisher geklärt; bis dahin gelten beide.',
      '„thing“ sagt, wovon ein Eintrag spricht, „within“, zu welchem Werk er gehört, „body“, was gesagt wurde. Bedeckung ist ein Anteil der Zone, 0 bis 1. Längen sind Meter, Flächen Quadratmeter.',
      'Was wann geschah, sagt das Datum des Rundgangs. „at“ ist nur das, was die Uhr des Tablets angab.',
      'Ein Eintrag der Art „erasure“ nennt Einträge und Fotos, die endgültig gelöscht wurden, und warum.',
    ],
    secrets: 'Es ist nicht verschlüsselt. Wer es hat, kann es lesen.',
    missing: 'Genannte Fotos, deren Bilder hier nicht liegen',
  },
};
