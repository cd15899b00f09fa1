import type { paperConservator as english } from '../en/paperConservator';
import type { Same } from '../tongue';

export const paperConservator: Same<typeof english> = {
  title: 'Blatt für die Restaurierung',
  reader: 'den Restaurator, der es ausfüllt',
  lead: 'Bitte schreiben Sie von Hand, oder lassen Sie es eintippen. Was Sie schreiben, wird unter Ihrem Namen als Vermutung aufbewahrt, getrennt von dem, was gesehen wurde; an unseren Einträgen ändert es nichts.',
  question: 'Was wir Sie fragen',
  questionHint: 'Ihre eigene Frage an den Restaurator. Sie steht auf dem Blatt zuerst.',

  ask: 'Warum wir fragen',
  askColumns: { zone: 'Zone', seen: 'Dort gesehen', why: 'Warum wir fragen' },
  askCaption: 'Zonen, die wir lieber nicht berühren, bevor Sie sie gesehen haben',
  askNone:
    'Nach unseren Regeln verlangt keine Zone des letzten Rundgangs nach einem Restaurator. Sehen Sie nach, wo Sie möchten.',
  askHow: 'Aus dem letzten Rundgang, nach Augenmaß. Bedeckung ist der bedeckte Anteil der Zone.',
  stopWord: (kinds: string) => `${kinds}: wird weder gewaschen noch gewachst, bevor Sie es sagen.`,
  noHold: 'Wachs hält hier nicht.',

  views: 'Zum Einzeichnen',
  viewsHow:
    'Zeichnen Sie ein, was Sie sehen. Die Buchstaben sind unsere; ziehen Sie neue Umrisse, wo unsere falsch sind.',

  viewNotes: 'Anmerkungen zur Zeichnung',

  before: 'Bisher vermutet',

  viewing: 'Wie Sie es gesehen haben',
  surface: 'Oberfläche',
  surfaces: ['trocken', 'feucht', 'nass', 'vor dem Waschen', 'nach dem Waschen'],
  light: 'Licht',
  lights: ['offener Schatten', 'bedeckt', 'Sonne', 'Kunstlicht'],
  reach: 'Erreicht von',
  reaches: ['dem Boden', 'einer Leiter', 'Hebebühne oder Gerüst', 'nur auf Fotos'],
  samples: 'Entnommene Proben oder Fotos und wo sie aufbewahrt werden',

  answers: 'Was Sie antworten',
  questions: {
    missing: { ask: 'Was sehen Sie, das bei uns nicht festgehalten ist?', short: 'Nicht festgehalten' },
    going: { ask: 'Was geht hier Ihrer Meinung nach vor, und wie sicher sind Sie?', short: 'Vermuteter Vorgang' },
    settle: {
      ask: 'Was würde es klären: eine Prüfung, eine Probe, ein weiterer Blick? Wo und wann?',
      short: 'Würde es klären',
    },
    leave: { ask: 'Was soll bis dahin niemand berühren, waschen oder wachsen?', short: 'In Ruhe zu lassen' },
    never: { ask: 'Was darf an diesem Werk nie getan werden?', short: 'Nie zu tun' },
    next: {
      ask: 'Worauf sollen wir bei den nächsten Rundgängen achten, und in welchen Zonen?',
      short: 'Als Nächstes anzusehen',
    },
    other: { ask: 'Was soll sonst noch festgehalten werden?', short: 'Außerdem gesagt' },
  },
  statement: (short: string, answer: string) => `${short}: ${answer}`,
  nameAndOffice: 'Name, Funktion, Anschrift',
  signs: 'Restaurator',
  source: 'Blatt für die Restaurierung',

  form: {
    title: 'Blatt für die Restaurierung',
    lead: 'Tippen Sie ein, was der Restaurator geschrieben oder gesagt hat. Jede Antwort wird unter diesem Namen als Vermutung aufbewahrt: Kein Befund und keine Zahl ändert sich.',
    back: 'Zurück zur Skulptur',
    by: 'Wessen Worte es sind',
    byHint: 'Name oder Funktion, wie es daneben stehen soll.',
    byMissing: 'Sagen Sie, wessen Worte es sind.',
    date: 'Tag, an dem es geschrieben oder gesagt wurde',
    about: 'Zum ganzen Werk oder zu einer Zone',
    whole: 'Das ganze Werk',
    nothing: 'Schreiben Sie mindestens eine Antwort.',
    keep: 'Antworten speichern',
    kept: (n: number) =>
      n === 1 ? '1 Antwort steht jetzt bei den Vermutungen.' : `${n} Antworten stehen jetzt bei den Vermutungen.`,
    paper: 'Das Blatt auf Papier',
    link: 'Ein Blatt für die Restaurierung eintippen',
    before: 'Bisher vermutet',
  },
  lacks: {
    noRound: 'Zu diesem Werk gibt es noch keinen Rundgang: Das Blatt fragt, ohne zu zeigen, was gesehen wurde.',
    question: 'Sie haben nicht geschrieben, was Sie fragen.',
  },
};
