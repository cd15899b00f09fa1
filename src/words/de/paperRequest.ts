import type { paperRequest as english } from '../en/paperRequest';
import type { Same } from '../tongue';

export const paperRequest: Same<typeof english> = {
  title: 'Angebotsanfrage',
  reader: 'Firmen und Restauratoren',
  heading: (campaign: string) => `Angebotsanfrage: ${campaign}`,
  lead: (owner: string, work: string) =>
    `${owner} bittet um Angebote zur Behandlung der Bronze ${work}, die im Freien steht. Hier steht, was gesehen wurde, wie viel davon es ist, wie das Werk erreicht wird und was vor Schaden zu bewahren ist. Nicht hier steht, wie es zu tun ist: Das Verfahren schlagen Sie vor.`,
  notice: 'Wer diese Arbeit tun darf',
  noticeText: [
    'Nur Firmen, die für das, was sie anbieten, zugelassen und versichert sind. Für Hitze, Gerüste, Chemikalien und Abfall gelten die örtlichen Regeln; wo dieses Papier und das Recht auseinandergehen, gilt das Recht.',
    'Ein Metallrestaurator ist auf Ihrer oder auf unserer Seite dabei, sagt, mit welchen Mitteln die Oberfläche behandelt wird, und darf die Arbeit anhalten.',
    'Keine Zahl hier sagt, wie nahe eine Flamme an etwas kommen darf, wie lange etwas hält oder was unter einer Oberfläche liegt. Fragen Sie, kommen Sie, messen Sie.',
  ],

  dates: 'Termine und Ansprechpersonen',
  datesLabel: 'Termine und Ansprechpersonen',
  datesHint:
    'Tag der Besichtigung, letzter Tag für Fragen, letzter Tag für Angebote, wann entschieden wird, an wen es geht.',
  datesRoom: ['Besichtigung', 'Fragen bis', 'Angebote bis, und an', 'Entscheidung bis'],
  siteVisit: 'Wer anbietet, war vor Ort. Niemand nennt einen Preis für etwas, das er nicht gesehen hat.',

  work: 'Das Werk',
  facts: {
    number: 'Nummer',
    title: 'Titel',
    maker: 'Urheber',
    date: 'Entstanden',
    materials: 'Material',
    dimensions: 'Maße',
    place: 'Standort',
    surface: 'Oberfläche',
  },
  surface: (all: string, low: string, high: string, zones: string) => `${all} in ${zones} Zonen (${low} bis ${high})`,
  history: 'Was bisher daran getan wurde',
  historyCaption: 'Aus dem Logbuch, das Neueste zuerst',
  historyColumns: { when: 'Wann', what: 'Was', where: 'Wo', with: 'Womit', by: 'Von wem' },
  historyNone: 'Im Logbuch steht nichts.',
  historyMore: (n: number) =>
    n === 1
      ? 'Ein früherer Eintrag ist nicht gezeigt; fragen Sie danach.'
      : `${n} frühere Einträge sind nicht gezeigt; fragen Sie danach.`,
  stripped: (n: number) =>
    n === 0
      ? 'Keine Behandlung, die Metall abnimmt, ist verzeichnet.'
      : n === 1
        ? 'Diese Oberfläche wurde nach den Unterlagen einmal bis aufs Metall freigelegt.'
        : `Diese Oberfläche wurde nach den Unterlagen ${n}-mal bis aufs Metall freigelegt.`,
  thoughtHow: 'Was jemand vermutet hat, mit Namen und Tag. Geprüft wurde es nicht, wenn es nicht dabeisteht.',

  causes: 'Was den Schaden nährt',
  causesCaption: 'Wird behoben, bevor die Oberfläche behandelt wird',
  causesColumns: { what: 'Was', where: 'Wo', state: 'Wie es steht', seen: 'Woran man es sieht' },
  causesCaptionPast: 'Wie sie heute stehen',
  causesNonePast: 'Keine Ursache ist festgehalten.',
  causesNone: 'Keine Ursache ist festgehalten. Sagen Sie in Ihrem Angebot, was Sie für eine halten.',
  causesOpen: 'Was noch wirkt, wird vor der Behandlung behoben, oder Ihr Angebot rechnet damit.',

  drawings: 'Zeichnungen: Ansichten und Zonen',
  drawingsNone: 'Noch sind auf keiner Ansicht Zonen eingezeichnet.',
  drawingsHow:
    'Die Umrisse wurden von Hand auf dem Foto daneben gezogen. Sie zeigen, welche Zone gemeint ist, und sind keine Grundlage zum Messen.',

  schedule: 'Leistungsverzeichnis',
  scheduleNone: 'Noch sind keine Positionen festgehalten. Ohne sie lassen sich Angebote nicht nebeneinanderstellen.',
  caption: (day: string) => `Positionen, Stand ${day}`,
  columns: {
    number: 'Nr.',
    what: 'Wo und was',
    amount: 'Menge',
    measured: 'Woher die Fläche stammt',
    reach: 'Erreicht',
    seen: 'Was gesehen wurde',
  },
  eachLine: (task: string) => `Jede Position meint dasselbe: ${task}.`,
  seenNear: (inserts: string) => `Einlagen darin: ${inserts}.`,
  measured: {
    typed: 'eingegeben: gemessen, aus Plänen oder geschätzt',
    solids: 'aus einfachen Körpern',
    strips: 'aus Umfang und Streifen',
    outline: 'aus einem Umriss auf einem Foto',
  },
  quantitiesHow: (low: string, high: string) =>
    `Die Flächen sind die der Bestandsaufnahme und können um ${low} bis ${high} und mehr abweichen; die Spanne steht dabei. Sie messen bei der Besichtigung; bezahlt wird, was gemeinsam vor Ort noch einmal gemessen wurde.`,
  total: (value: string, low: string, high: string) => `Behandelte Oberfläche: ${value} (${low} bis ${high}).`,
  seenHow: (day: string) =>
    `Was gesehen wurde: nach Augenschein beurteilt beim Rundgang vom ${day}, in den Worten der Person, die hingesehen hat. Keine Probe wurde genommen und nichts geöffnet, wenn es nicht dabeisteht.`,
  against: 'Wo Verzeichnis und heutige Unterlagen auseinandergehen',

  inserts: 'Einlagen und Nachbarn',
  insertsHow:
    'Jede wird ausgebaut oder abgeschirmt und überwacht, innerhalb der Grenze ihrer Fachperson. Ihren Schutz bieten Sie Position für Position an.',
  neighbours: 'Was ringsum steht',
  neighboursLabel: 'Was ringsum steht und vor Schaden zu bewahren ist',
  neighboursHint: 'Stein, Pflanzung, Pflaster, Tafeln, Rohre, Kabel, Tiere.',

  access: 'Zugang und Gelände',
  grounds: 'Vereinbart mit der Gartenpflege',
  groundsUsual:
    'Pflaster, Rasen, Pflanzung und Stein um das Werk werden abgedeckt, bevor etwas abgestellt wird, und so zurückgegeben, wie sie waren.',
  hours: 'Arbeitszeiten',
  hoursRoom: 'Arbeitszeiten',
  waste: 'Abwasser und Abfall',
  wasteUsual:
    'Waschwasser, verbrauchtes Strahlgut, Wachs und Chemikalien werden aufgefangen und nach den örtlichen Regeln entsorgt; nichts davon gelangt in Boden, Abfluss oder Becken.',

  hot: 'Heißarbeit',
  hotText:
    'Keine Flamme ohne Erlaubnisschein für den Tag, ohne Freibereich und ohne Brandwache, die nach der letzten Flamme bleibt. Wie viel davon, sagen Brandschutzbehörde und Versicherung; die veröffentlichten Regeln hierunter sind das Mindeste.',
  hotChecks: 'Angesehen und in Ordnung, bevor etwas entzündet wird',

  approvals: 'Probefläche, Musterplatte und wer zustimmt',
  approvalsText: [
    'Bevor die ganze Oberfläche angefasst wird, wird eine Probefläche von höchstens einer Handfläche gereinigt, dort, wo der Restaurator es sagt, und trocken von Restaurator und Eigentümer angesehen.',
    'Die Farbe wird an einer Musterplatte oder Musterstelle vereinbart, trocken und nass, in Sonne und Schatten angesehen, jedes Mal fotografiert und von denen unterschrieben, die zustimmen müssen: Künstler oder Nachlass, Eigentümer, Restaurator.',
    'Weiter geht es auf jeder Stufe erst nach einem schriftlichen Ja. Die Musterplatte bleibt beim Eigentümer.',
  ],
  stop: 'Wann die Arbeit anhält',
  stopText: [
    'Metall liegt blank, wo es nicht vereinbart war, oder Werkzeugspuren, Stempel oder Nähte leiden.',
    'Eine Einlage verändert sich, oder ein Messwert kommt ihrer Grenze nahe.',
    'Etwas Unerwartetes wird gefunden: eine alte Reparatur, ein Hohlraum, ein Kern, der nässt, eine Spur der ersten Farbe.',
    'Oberfläche, Luft oder Wetter liegen außerhalb dessen, was das Mittel verlangt.',
  ],
  stopThen:
    'Weiter geht es, wenn Restaurator und Eigentümer gesagt haben, wie. Ein Fund wird vor allem anderen fotografiert.',
  unwanted: 'Was nicht gewünscht ist',
  unwantedText: [
    'Lack oder ein anderer Film, der abgenommen werden muss, wenn er versagt.',
    'Ein Rezept, das nicht aufgeschrieben und übergeben wird.',
    'Arbeit durch Personen, die im Angebot nicht genannt sind.',
  ],
  unwantedForbidden: (methods: string) => `Nie an diesem Werk: ${methods}.`,

  proposal: 'Was das Angebot enthalten muss',
  proposalHow: 'Fehlt in einem Angebot eines davon, wird danach gefragt, bevor es beurteilt wird.',
  documents: 'Was übergeben wird',
  documentsHow: 'Der Bericht enthält:',
  documentsText:
    'Fotos vorher, während und nachher von den vor Ort markierten Standpunkten, in jedem ein Schild mit Werk, Zone und Tag; das Schichtenprotokoll; die Temperaturen; der Bericht. Die letzte Zahlung erfolgt gegen ihre Übergabe.',
  ownership: 'Wem Fotos und Rezept gehören',
  ownershipLabel: 'Wem Fotos und Rezept gehören',
  ownershipHint: 'Fragen Sie einen Juristen. Üblich: Beide dürfen die Fotos verwenden; das Rezept bleibt beim Werk.',
  ownershipRoom: 'Vor dem Vertrag zu klären',
  terms: 'Gewährleistung, Versicherung, Personen, Zahlung',
  termsText: [
    'Sagen Sie, bis wann Sie für die Arbeit einstehen, wofür, und wie bald Sie wiederkommen.',
    'Sagen Sie, wer das Werk versichert, während Sie es behandeln. Kunstversicherungen nehmen Schäden bei der Behandlung oft aus; unsere und Ihre Police werden vor dem Vertrag gemeinsam gelesen.',
    'Nennen Sie die Personen, die vor Ort sein werden, und was sie bisher getan haben. Ausgetauscht wird niemand ohne unser Ja.',
    'Die letzte Zahlung wird zurückgehalten, bis der Bericht vollständig ist.',
  ],
  termsLabel: 'Ihre eigenen Bedingungen',
  termsHint: 'Was Ihre Vergaberegeln verlangen. Es steht unter den üblichen Bedingungen.',

  criteria: 'Wie Angebote beurteilt werden',
  criteriaCaption: 'Gewicht, von 100',
  criteriaColumns: { what: 'Was', weight: 'Gewicht', asks: 'Worauf gesehen wird' },
  criteriaHow:
    'Nicht nach dem niedrigsten Preis allein. Jeder von uns urteilt zuerst für sich; wie weit wir auseinanderliegen, wird gezeigt. Die Gewichte sind eigene Wahl.',
  criteriaLabel: 'Wie Angebote beurteilt werden, in Ihren eigenen Worten',
  criteriaHint: 'Lassen Sie es leer, steht die Tabelle der Gewichte im Papier.',

  form: 'Preisblatt',
  formLead:
    'Auszufüllen und mit dem Angebot zurückzusenden. Alles in einer Währung. Eine leere Zeile gilt als nicht angeboten.',
  formCaption: 'Preise nach dem Leistungsverzeichnis',
  formColumns: {
    what: 'Position',
    amount: 'Menge',
    own: 'Von Ihnen gemessen',
    unit: 'Preis je Einheit',
    price: 'Preis',
  },
  formSum: 'Summe ohne Steuer',
  formTax: 'Steuer',
  formTotal: 'Summe mit Steuer',
  formRoom: [
    'Währung',
    'Gültig bis',
    'Vor Ort gewesen am',
    'Personen bei der Arbeit, mit Namen',
    'Versichert bei, bis zu',
    'Steht für die Arbeit ein bis',
  ],
  bidder: 'Bieter',

  photos: 'Fotos',
  photosHow: 'Das jeweils neueste von jedem Standpunkt und jeder Zone. Mehr davon und die Originale auf Anfrage.',

  lacks: {
    schedule: 'ein Leistungsverzeichnis',
    drawings: 'auf einer Ansicht eingezeichnete Zonen',
    dates: 'Termine und Ansprechpersonen',
    ownership: 'wem Fotos und Rezept gehören',
    hours: 'Arbeitszeiten',
    causes: 'ein Wort dazu, was den Schaden nährt',
    item: (name: string) => `als fehlend in dieser Anfrage vermerkt: ${name}`,
    unseen: 'dass jemand die Anfrage durchgesehen hat',
  },
};
