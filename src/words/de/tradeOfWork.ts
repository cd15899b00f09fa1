import type { NamesOfTrade } from '../../engine/trade';

const named = (rows: Readonly<Record<string, string>>): NamesOfTrade[string] =>
  Object.fromEntries(Object.entries(rows).map(([id, name]) => [id, { name }]));

/** Large treatments: the way there, the work, its papers. */
export const tradeOfWork: NamesOfTrade = {
  optionSorts: {
    'keep waxing': {
      name: 'Weiter wachsen',
      does: 'Jedes Jahr waschen und kalt wachsen wie bisher. Das verlangsamt, was wiederkommt, und verdeckt nichts, was da ist.',
      who: 'Die kuratorische Leitung mit einer Hilfskraft; Heißwachsen ist Sache einer Firma.',
      risks: 'Wo das Wachs nicht hält, gehen Grün und Lochfraß darunter weiter, und jedes Jahr dauert es länger.',
    },
    'wax and local treatment': {
      name: 'Wachsen und örtlich behandeln',
      does: 'Wachsen wie bisher; von Zeit zu Zeit wird nur in den schlechtesten Zonen das Grün abgenommen und die Farbe neu angelegt.',
      who: 'Wachsen: die kuratorische Leitung. Örtliche Arbeiten: ein Restaurator oder ein Patineur unter dessen Leitung.',
      risks: 'Flecken, die nicht zueinander passen, und jedes Mal geht dort etwas Metall und alte Farbe verloren.',
      irreversible: 'Jede örtliche Behandlung nimmt für immer ein wenig von der Oberfläche.',
    },
    'strip and repatinate': {
      name: 'Freilegen und neu patinieren, dann wachsen',
      does: 'Alle Schichten werden bis aufs Metall abgenommen, eine neue Farbe wird mit Wärme angelegt und gewachst; danach jedes Jahr Wachs.',
      who: 'Ein Restaurator entscheidet und überwacht; Heißarbeit mit Zulassung; Künstler oder Nachlass und Eigentümer stimmen der Farbe zu.',
      risks:
        'Verlorene Werkspuren, offene Poren, gesprungene Einlagen, eine Farbe, die nicht die des Werks ist; der Versicherer deckt es vielleicht nicht.',
      irreversible: 'Die alte Oberfläche und die letzten Reste der ersten Farbe sind für immer verloren.',
    },
    'cause first': {
      name: 'Zuerst die Ursache beseitigen',
      does: 'Regner, Tropfwasser, Vogelsitz, Salz oder Berührung werden beseitigt, dann wird eine Saison beobachtet, bevor anderes bezahlt wird.',
      who: 'Die kuratorische Leitung mit der Gartenpflege; Wasser und Strom die Fachbetriebe.',
      risks: 'Eine weitere Saison Grün; vielleicht war es nicht die Ursache.',
    },
    investigate: {
      name: 'Untersuchung veranlassen',
      does: 'Ein Restaurator sieht es an, macht Proben und schlägt schriftlich vor, mit allen Einträgen in der Hand.',
      who: 'Ein Restaurator.',
      risks: 'Eine Probe nimmt eine kleine Menge Material; die Antwort kann sein, dass nichts zu tun ist.',
    },
    wait: {
      name: 'Abwarten',
      does: 'Nichts Neues geschieht; Rundgänge und Kontrollblicke gehen weiter, und der Tag der nächsten Entscheidung steht fest.',
      who: 'Die kuratorische Leitung.',
      risks: 'Was wächst, wächst weiter, und die Preise steigen.',
    },
    other: { name: 'Etwas anderes' },
  },
  campaignSteps: {
    trigger: { name: 'Anlass', asks: 'Was zeigt, dass die bisherige Pflege nicht mehr genügt.' },
    causes: {
      name: 'Zuerst die Ursachen',
      asks: 'Beseitigen, was den Schaden nährt, und eine Saison warten, wo das genügen kann.',
    },
    assessment: {
      name: 'Untersuchung',
      asks: 'Ein Restaurator sieht es an, macht Proben und legt Wege der Behandlung schriftlich vor.',
      decides: 'Der Restaurator',
    },
    rights: {
      name: 'Rechte und Absicht',
      asks: 'Welche Farbe das Werk haben soll, nach welchen Belegen, und wer zu fragen ist.',
      decides: 'Künstler oder Nachlass und Eigentümer; Rechtsberatung zu den Urheberrechten',
    },
    options: {
      name: 'Möglichkeiten',
      asks: 'Welcher Weg, und was Sie umstimmen würde.',
      decides: 'Der Eigentümer, auf Rat des Restaurators',
    },
    money: { name: 'Geld', asks: 'Ziel, Rücklage für Unvorhergesehenes, Unterhalt; die Pflege geht derweil weiter.' },
    request: {
      name: 'Anfrage und Angebote',
      asks: 'Dieselbe Aufgabe schriftlich für alle; ausgewählt nach mehr als dem Preis.',
    },
    access: {
      name: 'Zugang und Genehmigungen',
      asks: 'Wie das Werk erreicht wird, wer was sperrt und leert, wer Heißarbeit erlaubt.',
      decides: 'Die befähigte Person; für Heißarbeit Brandschutzbehörde und Versicherer',
    },
    inserts: {
      name: 'Einlagen und Umgebung',
      asks: 'Ausgebaut, oder abgeschirmt und überwacht in den Grenzen einer benannten Fachperson.',
      decides: 'Eine Fachperson für das Material',
    },
    before: {
      name: 'Aufnahme davor',
      asks: 'Jede Zone und jeder Standpunkt, trocken und sauber. Nach diesem Tag ist der Beleg verloren.',
    },
    strip: {
      name: 'Freilegung',
      asks: 'Zuerst eine Probefläche, gesehen und unterschrieben; aufhören, wo Metall oder Werkspuren leiden.',
      decides: 'Der Restaurator',
    },
    colour: {
      name: 'Farbe vereinbart',
      asks: 'Musterplatte trocken und nass gesehen, in Sonne und Schatten, und unterschrieben.',
      decides: 'Wer unterschreiben muss: Künstler oder Nachlass, Eigentümer, Restaurator',
    },
    patina: {
      name: 'Patina',
      asks: 'Jede Schicht aufgeschrieben, wenn sie aufgetragen wird.',
      decides: 'Der Restaurator und das Handwerk',
    },
    wax: { name: 'Wachs', asks: 'Mittel, Charge, Schichten.' },
    report: { name: 'Bericht', asks: 'Übergeben und vollständig vor der letzten Zahlung.' },
    watch: {
      name: 'Nachbeobachtung',
      asks: 'Kontrollblicke nach 1, 3, 6, 12 und 24 Monaten, dann jährlich; einer vor Ende der Gewährleistung.',
    },
    close: { name: 'Abgeschlossen', asks: 'Was es gekostet hat, was gehalten hat, was Sie nicht wieder täten.' },
  },
  bidCriteria: {
    method: { name: 'Verfahren', asks: 'ob es zu dieser Oberfläche passt, was es wegnimmt, was zuerst probiert wird' },
    people: { name: 'Personen', asks: 'wer vor Ort ist, und Werke von ihnen, die wir ansehen dürfen' },
    price: { name: 'Preis', asks: 'Position für Position, zu denselben Mengen' },
    documentation: { name: 'Dokumentation', asks: 'Fotos, Schichtenprotokoll, Bericht' },
    programme: { name: 'Ablauf und Zugang', asks: 'Tage, Reihenfolge, Sperrungen' },
  },
  workItems: named({
    'strip and repatinate': 'Freilegen, entsalzen, wo verlangt, patinieren und wachsen',
    'clean down': 'Reinigen bis auf die intakte Oberfläche',
    desalt: 'Salze ausziehen, mit Proben vorher und nachher',
    patinate: 'Patinieren im vereinbarten Farbton',
    'local colour': 'Örtlich reinigen und Farbe anlegen',
    'wash and wax': 'Waschen und wachsen',
    'take out and refit': 'Ausbauen, sicher verwahren und wieder einsetzen',
    'shield and watch': 'Abschirmen und Temperatur überwachen',
    'sample area': 'Probefläche und Musterplatte',
    access: 'Zugang: Gerüst, Hebebühne oder Arbeitsbühne',
    drain: 'Becken leeren, abdämmen und wieder füllen',
    'protect around': 'Stein, Pflanzung und Pflaster ringsum schützen',
    report: 'Fotos, Schichtenprotokoll und Bericht',
  }),
  itemsOfRequest: {
    'site visit': {
      name: 'Tag der Ortsbegehung',
      means: 'Niemand nennt einen Preis für etwas, das er nicht gesehen hat.',
    },
    access: { name: 'Zugang, Reichweite und Untergrund' },
    'water and power': { name: 'Wasser und Strom' },
    'drainage and waste': { name: 'Entwässerung, Abfluss und Abfall' },
    'hot work': {
      name: 'Regeln für Heißarbeit',
      means: 'Erlaubnisschein, Freibereich, Wache: wie Brandschutzbehörde und Versicherer es verlangen.',
    },
    inserts: { name: 'Liste der Einlagen und wer ihre Grenzen setzt' },
    'test panel': { name: 'Probefläche, Musterplatte und wer sie freigibt' },
    'stop work': {
      name: 'Wann die Arbeit ruht',
      means: 'Blankes Metall, verlorene Werkspuren, eine Einlage, die sich verändert, ein unerwarteter Fund.',
    },
    exclusions: { name: 'Was nicht gewünscht ist', means: 'Lack, versiegelte Oberflächen, Rezepte ohne Aufzeichnung.' },
    documents: {
      name: 'Zu übergebende Unterlagen',
      means: 'Fotos während der Arbeit und danach, Schichtenprotokoll, Bericht.',
    },
    ownership: { name: 'Wem Fotos und Rezept gehören' },
    warranty: { name: 'Gewährleistung und Nachbesserung' },
    insurance: {
      name: 'Versicherung während der Arbeit',
      means: 'Schaden durch die Behandlung ist oft nicht gedeckt: Fragen Sie Ihren Makler.',
    },
    'named people': { name: 'Befähigung und Referenzen der benannten Ausführenden' },
    criteria: { name: 'Wie Angebote bewertet werden', means: 'Nicht allein nach dem niedrigsten Preis.' },
    payment: { name: 'Letzte Zahlung gegen den Bericht' },
  },
  itemsOfProposal: named({
    condition: 'Der Zustand, um den es geht',
    aim: 'Das Ziel',
    tests: 'Ausgeführte Proben und was sie zeigten',
    steps: 'Schritte mit Verfahren und Materialien, Zone für Zone',
    alternatives: 'Andere Wege, und warum nicht',
    result: 'Das zu erwartende Ergebnis, und wie lange es halten kann',
    risks: 'Risiken, und was nicht rückgängig zu machen ist',
    inserts: 'Schutz der Einlagen und der Umgebung',
    documents: 'Die angebotene Dokumentation',
    people: 'Die Ausführenden',
    time: 'Zeit und Ablauf',
    costs: 'Kosten, Position für Position',
    'after-care': 'Nachsorge',
  }),
  itemsOfReport: named({
    identity: 'Werk, Daten und Namen',
    procedures: 'Was getan wurde, Zone für Zone',
    deviations: 'Wo es anders lief als geplant, und warum',
    'materials added': 'Eingebrachte Materialien: Mittel, Hersteller, Konzentration, Charge',
    'materials removed': 'Abgenommene Materialien und aufbewahrte Proben',
    'condition after': 'Zustand nach der Behandlung',
    'new information': 'Was sich dabei herausstellte',
    care: 'Pflegeempfehlungen',
    'photos before': 'Fotos davor',
    'photos during': 'Fotos des Freigelegten',
    'photos after': 'Fotos danach',
    layers: 'Das Schichtenprotokoll',
    temperatures: 'Temperaturen an den Einlagen',
    warranty: 'Gewährleistung: bis wann, durch wen, wofür',
  }),
};
