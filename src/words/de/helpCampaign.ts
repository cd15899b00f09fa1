import type { helpCampaign as english } from '../en/helpCampaign';
import type { Same } from '../tongue';

export const helpCampaign: Same<typeof english> = {
  'sculpture-campaigns': {
    title: 'Maßnahmen',
    what: 'Die Behandlungen eines Werks und davor die Ursachen: Was den Schaden nährt, kommt zuerst dran.',
    first:
      'Beantworten Sie die Ursachen, nach denen zu sehen sich hier lohnt. Eröffnen Sie eine Maßnahme erst, wenn Pflege nicht mehr reicht.',
    from: 'Vorgeschlagene Ursachen passen dazu, wie die Zonen liegen und was sie erreicht.',
  },
  campaign: {
    title: 'Eine Maßnahme',
    what: 'Wo die Behandlung steht, was bei diesem Schritt noch verlangt ist, und alle ihre Papiere und Protokolle.',
    first:
      'Lesen Sie „Jetzt“. Tun Sie, was verlangt ist; gehen Sie weiter, wenn es da ist, oder trotzdem, mit einem Grund.',
    from: 'Jeder Schritt sieht in den Daten nach, was er braucht. Sie gehen weiter, nichts geht von selbst.',
  },
  'campaign-quantities': {
    title: 'Leistungsverzeichnis',
    what: 'Die Arbeit in nummerierten Positionen, je Zone und Arbeit eine, die jeder Bieter gleich bepreist.',
    first:
      'Lassen Sie die Positionen aus den Zonen bilden, streichen Sie, was nicht gewollt ist, und ergänzen Sie, was fehlt.',
    from: 'Flächen der Bestandsaufnahme, gut genug zum Kalkulieren. Jeder Bieter misst beim Ortstermin; bezahlt wird, was neu gemessen ist.',
  },
  'campaign-bids': {
    title: 'Angebote',
    what: 'Die Angebote Position für Position nebeneinander, mit dem, wonach zu fragen ist; darunter die Wertung: Gewichte, Noten jeder Person, Summen mit ihrer Spanne.',
    first:
      'Legen Sie Gewichte und Wertende fest, bevor Angebote kommen. Tragen Sie jedes Angebot entlang des Verzeichnisses ein; lesen Sie die Fragen vor den Summen.',
    from: 'Hier wird nachgerechnet. Positionen weit von der Mitte und Flächen weit von der Bestandsaufnahme werden genannt.',
  },
  'campaign-papers': {
    title: 'Ist es vollständig?',
    what: 'Anfrage, Vorschlag oder Schlussbericht, Punkt für Punkt: da, fehlt, nicht nötig.',
    first: 'Gehen Sie es mit dem Papier daneben durch. Was fehlt, ergibt einen Brief, den Sie senden können.',
    from: 'Die Listen folgen dem, was veröffentlichte Leitfäden von solchen Papieren verlangen.',
  },
  'campaign-approvals': {
    title: 'Freigaben und vereinbarter Farbton',
    what: 'Wer wozu Ja gesagt hat, mit Foto, Worten und Unterschrift, bevor die Arbeit weiterging.',
    first: 'Schreiben Sie zuerst die Probefläche auf: wo, wie groß, wie gemacht, wer unterschreibt.',
    from: 'Die genannten Personen. Der vereinbarte Farbton wird das Maß aller späteren Messungen.',
  },
  'campaign-layers': {
    title: 'Farbschichten',
    what: 'Was auf welche Zone kam, in welcher Reihenfolge, nach dem Wort derer, die es taten.',
    first:
      'Bitten Sie darum, einen Vormittag dabeizustehen, und schreiben Sie jede Schicht auf, wenn sie aufgetragen wird.',
    from: 'Das Wort der Werkstatt. Wer den Farbton in zehn Jahren treffen will, fängt hier an.',
  },
  'campaign-hot-work': {
    title: 'Tage mit Heißarbeit',
    what: 'Eine Karte für jeden Tag mit Flamme oder heißem Metall.',
    first:
      'Legen Sie die Karte am Vortag an: Erlaubnisschein, Brandwache, Freibereich. Ohne Erlaubnisschein wird nichts entzündet.',
    from: 'Veröffentlichte Regeln stehen am Ende mit ihrer Quelle; Ihre können mehr verlangen.',
  },
  'hot-work': {
    title: 'Ein Tag mit Heißarbeit',
    what: 'Erlaubnisschein, Brandwache, Temperaturen an den Einlagen und die Wache nach der Flamme. Der Tag lässt sich ohne das Foto danach nicht schließen.',
    first:
      'Füllen Sie den oberen Teil aus, bevor etwas entzündet wird. Schreiben Sie alle paar Minuten Temperaturen auf; die Grenze steht daneben.',
    from: 'Ihre Messwerte. Die Zeitanzeige erinnert nur und ist keine Sicherheitseinrichtung: Ein Tablet schläft.',
  },
};
