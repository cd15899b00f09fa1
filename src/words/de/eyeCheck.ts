import type { eyeCheck as english } from '../en/eyeCheck';
import type { Same } from '../tongue';

export const eyeCheck: Same<typeof english> = {
  title: 'Augenprobe',
  lead: 'Zwölf gezeichnete Felder mit bekannter Bedeckung, etwa zwei Minuten: Gemessen wird, wie weit ein Auge irrt, damit Spannen und Veränderungen darauf beruhen und nicht auf einer Annahme.',
  who: 'Wessen Auge',
  whoHint: 'Wählen Sie eine Person, um zu beginnen. Jede macht ihre eigene Probe.',
  nobody: 'Noch niemand eingetragen',
  nobodyWhat: 'Eine Augenprobe gehört zu einer Person. Tragen Sie zuerst ein, wer hier erfasst.',
  toSettings: 'Eintragen, wer erfasst',
  readingOnly: 'Diese Seite liest nur; hier lässt sich keine Augenprobe machen.',

  begin: 'Beginnen',
  beginAgain: 'Noch eine Probe machen',
  beginAnew: 'Neu beginnen',
  beginWhat:
    'Beurteilen Sie jedes Feld wie eine Zone, mit einer Berührung und ohne lange zu überlegen. Die Hälfte liegt unter 10 %, denn dort kommt das Grün wieder. Sie können jederzeit aufhören und später weitermachen.',
  goOn: (patch: number, all: number) => `Weiter bei Feld ${patch} von ${all}`,
  stoppedTitle: 'Eine Probe ist nicht beendet',
  stopped: (done: number, all: number) =>
    done === 1
      ? `1 von ${all} Feldern ist beurteilt. Verwendet wird nichts davon, bis es alle sind.`
      : `${done} von ${all} Feldern sind beurteilt. Verwendet wird nichts davon, bis es alle sind.`,
  leave: 'Verwerfen',
  left: 'Die unfertige Probe ist verworfen.',

  patch: (patch: number, all: number) => `Feld ${patch} von ${all}`,
  patchPicture: 'Gezeichnete Bronze mit Grün darauf',
  ask: 'Wie viel von diesem Feld ist grün?',
  askWhat:
    'Die kleinen Felder neben den Stufen sind da wie beim Rundgang: Gemessen wird Ihr Auge, wie es bei der Arbeit ist.',
  drawing: 'Wird gezeichnet …',
  back: 'Voriges Feld',
  stop: 'Für jetzt aufhören',
  made: 'Die Augenprobe ist gespeichert.',

  known: (who: string) => `Was über dieses Auge bekannt ist: ${who}`,
  notKnown: 'Noch nicht bekannt',
  notKnownWhat: (said: string, low: string, high: string) =>
    `Bis eine Probe gemacht ist oder Zonen erneut gefragt wurden, wird die übliche Unsicherheit angenommen: Wo es ${said} sagt, wird der wahre Wert zwischen ${low} und ${high} angenommen.`,
  likely: (said: string, low: string, high: string) =>
    `Wo dieses Auge ${said} sagt, liegt der wahre Wert wahrscheinlich zwischen ${low} und ${high}.`,
  likelyBeside: (said: string, value: string, low: string, high: string) =>
    `Wo dieses Auge ${said} sagt, ist der wahre Wert wahrscheinlich etwa ${value}, zwischen ${low} und ${high}.`,
  steady: {
    steadier:
      'Dieses Auge ist beständiger, als üblicherweise angenommen wird. Seine Rundgänge bekommen engere Spannen, und eine kleinere Veränderung gilt als echt.',
    usual: 'Dieses Auge ist etwa so beständig, wie üblicherweise angenommen wird.',
    wider:
      'Dieses Auge schwankt von Mal zu Mal mehr, als üblicherweise angenommen wird. Seine Rundgänge bekommen weitere Spannen, und erst eine größere Veränderung gilt als echt.',
  },
  lean: {
    none: 'Keine Neigung zu mehr oder weniger, die nicht auch der Zufall ergäbe.',
    noCurve: 'Ob es zu mehr oder weniger neigt, ist nicht bekannt: Dazu braucht es eine Augenprobe.',
    shown: (truth: string, said: string) => `Es hat eine Neigung: Wo ${truth} wahr ist, sagt es etwa ${said}.`,
  },
  used: 'Was von jetzt an verwendet wird',
  usedSpread: (sd: string, usual: string) =>
    `Die Unsicherheit dieses Auges, ${sd} (üblicherweise angenommen: ${usual}; Standardabweichung auf der Logit-Skala), in den Spannen aller Rundgänge dieser Person und in jeder Frage, ob sich sicher etwas verändert hat.`,
  usedLean:
    'Wo eine Neigung belegt ist, steht der berichtigte Wert neben dem eingegebenen. Was eingegeben wurde, wird nie geändert, und kein Index und kein Urteil verwendet den berichtigten.',
  restsOn: 'Worauf es beruht',
  rests: {
    checks: 'Augenproben',
    patches: 'Beurteilte Felder',
    pairs: 'Am Ende von Rundgängen zweimal beurteilte Bedeckungen',
    worth: 'Gewicht, in Paaren, die keine Leiterstufe verwischt',
    seen: 'Allein in ihnen gesehene Streuung',
    own: 'Mit den zehn angenommenen Paaren',
    used: 'Wie verwendet, weiter, weil es auf wenig beruht',
  },

  curve: 'Was gesagt wurde und was wahr ist',
  curveWhat: (patches: number) =>
    `Alle ${patches} Felder dieses Auges. Auf der dünnen Linie sagt das Auge, was wahr ist; darüber sagt es mehr.`,
  curveTitle: 'Was dieses Auge zu Feldern mit bekannter Bedeckung sagte',
  axisTrue: 'wahre Bedeckung, %',
  axisSaid: 'gesagt, %',
  legend: { true: 'sagt, was wahr ist', curve: 'dieses Auge, mit seiner 90-%-Spanne', patch: 'ein Feld' },
  tableShow: 'Felder als Tabelle zeigen',
  tableHide: 'Tabelle verbergen',
  table: 'Felder dieses Auges',
  columns: { day: 'Probe', true: 'Wahr', said: 'Gesagt' },
  curveTable: 'Die Kurve',
  curveColumns: { true: 'Wo dies wahr ist', said: 'sagt dieses Auge', low: 'von', high: 'bis' },

  checks: 'Frühere Proben',
  checkOf: (day: string) => `Probe vom ${day}`,
  checkMeans: (patches: number, more: number, less: number) =>
    `${patches} Felder: ${more} höher gesagt als die Stufe, in der sie liegen, ${less} niedriger.`,
  remove: (day: string) => `Probe vom ${day} entfernen`,
  removeShort: 'Entfernen',
  removed: 'Die Probe ist entfernt und zählt nicht mehr.',
  notASchoolMark:
    'Das ist keine Note. Zwei gute Augen unterscheiden sich; wichtig ist, dass die Unsicherheit bekannt ist.',
  notTheBronze:
    'Ein gezeichnetes Feld ist keine Bronze in der Sonne. Am Ende eines Rundgangs erneut gefragte Zonen sagen etwas über dasselbe Auge im Freien, und beides wird zusammen gezählt.',

  corrected: (value: string) => `nach der Augenprobe berichtigt: etwa ${value}`,

  assumedHere:
    'Wie beständig das Auge ist, das hingesehen hat, ist noch nicht bekannt; deshalb wird die übliche Unsicherheit angenommen.',
  invite: 'Augenprobe machen',
  inviteTitle: 'Wie gut ist das Auge?',
  inviteWhat:
    'Zwei Minuten mit gezeichneten Feldern, und die Spannen Ihrer Rundgänge beruhen auf Ihrer eigenen statt auf einer angenommenen Unsicherheit.',
  pairsSoFar: (pairs: number) =>
    pairs === 1
      ? 'Eine zweimal beurteilte Bedeckung ist schon gezählt.'
      : `${pairs} zweimal beurteilte Bedeckungen sind schon gezählt.`,
  inSettings: 'Bekannte Augen',
  inSettingsWhat:
    'Wie weit das Auge jeder Person bekannt ist. Es wird für die Rundgänge verwendet, die diese Person macht.',
  toCheck: 'Augenprobe',
  person: 'Wer',
  spread: 'Unsicherheit',
  pairs: 'Zweimal beurteilt',
  patches: 'Felder',
  assumedIs: (sd: string) => `${sd}, angenommen`,
  eyeOf: (who: string) => `Das Auge: ${who}`,

  method: 'Die Unsicherheit eines Auges',
  methodText: [
    'Solange sie nicht bekannt ist, wird angenommen, dass eine Person beim erneuten Hinsehen um 0,30 auf der Logit-Skala der Bedeckung irrt.',
    'Bekannt wird sie aus zweierlei: aus Bedeckungen, die am Ende eines Rundgangs erneut gefragt werden (die Hälfte der quadrierten Differenz eines Paars ist die Varianz eines Urteils), und aus Feldern bekannter Bedeckung in einer Augenprobe (die Streuung um die Linie durch das Gesagte, sodass eine Neigung nicht als Unbeständigkeit zählt).',
    'Die Breite der Leiterstufen und das halbe Prozent, unter das niemand kommt, werden zuvor abgezogen. Jedes Urteil zählt nach dem, was es daneben noch sagt: bei „unter 1 %“ so gut wie nichts.',
    'Immer werden zehn angenommene Paare mitgezählt: s² = (10 × 0,30² + v × gesehenes s²) / (10 + v), nicht unter 0,20. Weil es auf wenig beruht, wird es weiter verwendet, nach Students t mit 10 + v Freiheitsgraden im Verhältnis zum Normalquantil, und in Hundertsteln angegeben.',
    'Punkte, umfahrene Flecken und Fotos sind keine Augen, ebenso wenig übernommene Antworten. Licht und Feuchte eines Tages und der Unterschied zwischen zwei Personen kommen wie bisher einmal hinzu.',
    'Eine Neigung ist eine Gerade durch das Gesagte und das Wahre, beides auf der Logit-Skala. Belegt heißt sie, wo der Zufall sie selten ergäbe. Der berichtigte Wert steht neben dem Eintrag und geht in keine Rechnung ein.',
  ],
  methodNumbers: 'Zahlen, auf denen die Unsicherheit eines Auges beruht',
  methodEyes: 'Augen dieser Sammlung',
  methodNoEyes: 'In dieser Sammlung ist noch kein Auge bekannt: Für alle wird die übliche Unsicherheit angenommen.',
};
