import type { helpTerms as english } from '../en/helpTerms';
import { measure } from '../format';
import type { Same } from '../tongue';

export const helpTerms: Same<typeof english> = {
  zone: [
    'Zone',
    'Ein benannter Teil, der als Ganzes beurteilt wird: eine Oberfläche, eine Exposition, eine bekannte Fläche. Die Buchstaben folgen dem Weg.',
  ],
  round: ['Rundgang', 'Einmal um ein Werk, Zone für Zone, an einem Tag.'],
  look: [
    'Kontrollblick',
    'Drei Minuten vom Boden aus, zwischen den Rundgängen: Ist das Grün wieder da, wo gewachst wurde?',
  ],
  finding: ['Befund', 'Eine Art von Veränderung der Oberfläche, in einer Zone gesehen.'],
  coverage: ['Bedeckung', 'Der Anteil der Zone, den ein Befund einnimmt.'],
  severity: [
    'Schwere',
    'Leicht: nur Farbe oder Glanz. Mäßig: Struktur oder Einzelheiten. Schwer: Tiefe, Form oder Funktion.',
  ],
  activity: ['Aktivität', 'Ob es weitergeht: aktiv, ruhend oder unklar. Ohne Angabe gilt unklar.'],
  origin: ['Wo er sitzt', 'Schmutz, der sich abwaschen lässt, ein Fleck aus einer Zone darüber oder im Metall selbst.'],
  carried: [
    'Übernommen',
    'Eine Antwort aus dem Rundgang davor, nicht neu beurteilt. Sie beweist für dieses Jahr nichts.',
  ],
  notLooked: ['Nicht angesehen', 'Niemand hat die Zone gesehen; der Grund steht dabei. Sie zählt nie als intakt.'],
  ownEye: [
    'Erst das eigene Auge',
    'Der frühere Wert zeigt sich erst nach Ihrem, damit zwei Jahre zwei Meinungen sind.',
  ],
  beading: [
    'Abperlen',
    'Was die Tropfen der Sprühflasche tun: rund stehen, flach liegen, als Film laufen oder einziehen und dunkeln.',
  ],
  stop: [
    'Stoppbegriff',
    'Ein Befund, bei dem es heißt: festhalten, fotografieren, nicht waschen, nicht wachsen. Fragen Sie den Restaurator.',
  ],
  personCheck: [
    'Gefahrenmeldung',
    'Etwas, das jemanden verletzen könnte. Es steht über jeder Liste, bis eine benannte Person es schließt.',
  ],
  index: ['Zustandsindex', '100 heißt intakt. Jeder Befund zieht ab, nach Art, Bedeckung, Schwere und Aktivität.'],
  range: ['Spanne', 'In neun von zehn Fällen liegt der Wert darin, soweit es an der Unsicherheit des Auges liegt.'],
  classes: [
    'Klassen',
    'Zustand, Dringlichkeit und Empfehlung nach EN 16096: nach Regel vorgeschlagen, von einer benannten Person gesetzt.',
  ],
  burden: [
    'Last',
    'Fläche mal Gewicht mal dem, was dem Index der Zone zu 100 fehlt. Je größer, desto früher ist sie dran.',
  ],
  firm: ['Fest', 'Der Platz in der Reihe bleibt in neun von zehn Ziehungen innerhalb der Unsicherheiten derselbe.'],
  alike: [
    'Gleichartig',
    'Zwei Rundgänge derselben Art und im selben Zustand, etwa jährlich, trocken und vor dem Waschen. Nur sie lassen sich gut vergleichen.',
  ],
  sure: [
    'Sichere Veränderung',
    'Ein Unterschied, der größer ist, als beide Unsicherheiten zusammen erklären. Doppelt so groß heißt er deutlich.',
  ],
  alone: [
    'Für sich allein, könnte Zufall sein',
    'Es sieht verändert aus, doch unter so vielen Vergleichen ist einer dieser Art zu erwarten.',
  ],
  trend: ['Trend', 'Das Wort fällt erst ab fünf Rundgängen, und nur wenn der Zufall allein das selten täte.'],
  hold: [
    'Standzeit',
    'Wie lange eine Beschichtung das Grün fernhielt: zwischen dem letzten Blick ohne und dem ersten mit Grün.',
  ],
  noCleanStart: ['Kein sauberer Anfang', 'Grün stand gleich nach dem Beschichten dort; es begann keine Standzeit.'],
  elevation: ['Ansicht', 'Foto oder Zeichnung einer Seite, auf der die Zonen umrissen sind.'],
  station: ['Standpunkt', 'Markierte Stelle, Richtung und Höhe, von denen jedes Jahr dasselbe Foto entsteht.'],
  square: [
    'Beobachtungsquadrat',
    'Je Werk eine beste und eine schlechteste Stelle von 10 × 10 cm, im selben Rahmen fotografiert.',
  ],
  register: [
    'Aufeinandergelegt',
    'Markierte Punkte werden zur Deckung gebracht; der Rest sagt, ob eine Karte der Veränderung zu trauen ist.',
  ],
  dots: [
    'Punkte',
    'Über das Foto gestreut; Sie sagen, was unter jedem liegt, und der Anteil folgt mit seiner Unsicherheit.',
  ],
  ciede: [
    'Einheit des Unterschieds',
    'CIEDE2000. Ein geübtes Auge sieht 1 auf zwei ebenen Flächen bei gutem Licht eben noch.',
  ],
  agreed: [
    'Vereinbarter Farbton',
    'Die Farbe, für die unterschrieben wurde, in Zahlen oder als Musterplatte festgehalten.',
  ],
  carry: [
    'Mitgeben',
    'Die Bestandsaufnahme geht als Datei hinaus und kommt so herein. Sonst verlässt nichts das Gerät.',
  ],
  bag: ['Tasche', 'Eine Zip-Datei mit Daten, Fotos, einem Bericht, der ohne diese App lesbar ist, und Prüfsummen.'],
  twoVersions: [
    'Zwei Fassungen',
    'Zwei Personen haben dasselbe festgehalten, ohne einander zu sehen. Beide bleiben, bis jemand es klärt.',
  ],
  inStep: [
    'Abgeglichen',
    'Mehrere Geräte schreiben in einen gemeinsamen Ordner, und jedes hat dieselbe Bestandsaufnahme.',
  ],
  device: [
    'Auf diesem Gerät',
    'Die Daten liegen unverschlüsselt im Speicher des Browsers und nirgends sonst, bis Sie sie mitgeben.',
  ],
  surveyor: [
    'Wer untersucht',
    'Einträge tragen die Funktion; der Name liegt getrennt und kann aus einer Datei wegbleiben.',
  ],
  exposure: ['Exposition', 'Wie ein Teil liegt und was ihn erreicht: Regen, Tropfen, Gischt, Hände, Salz.'],
  areaError: [
    'Unsicherheit der Fläche',
    'Um wie viel die Fläche falsch sein kann. Sie geht in Quadratmeter und Summen ein.',
  ],
  zoneVersion: [
    'Fassung einer Zone',
    'Neue Fläche oder Oberfläche von einem Tag an; frühere Rundgänge behalten die alte.',
  ],
  insert: ['Einlage', 'Glas, Email oder Stein in der Bronze; sie verträgt weniger Hitze und Stoß als das Metall.'],
  pastWork: ['Standzeit überschritten', 'Die Hälfte solcher Beschichtungen hat bis jetzt versagt.'],
  due: [
    'Fällig',
    'Verlangt von Standzeit, Plan, Zusage oder Person und in den Daten noch nicht als erledigt zu sehen.',
  ],
  liftDay: ['Tag mit Hebebühne', 'Eine Bühne ist da. Werke, die sie brauchen, kommen auf denselben Tag.'],
  verdict: [
    'Urteil des Jahres',
    'Was es für ein Werk war: halten, beobachten, örtlich behandeln, Restaurator fragen, Maßnahme.',
  ],
  option: [
    'Möglichkeit',
    'Ein Weg weiter: wachsen wie bisher, ausbessern, freilegen und neu patinieren, Ursache beseitigen, warten.',
  ],
  goodMonth: ['Guter Monat', 'Ein Monat im Jahr, in dem das Grün wegbleibt. Kosten werden daran gemessen.'],
  presentValue: [
    'Heutiger Wert',
    'Spätere Kosten und Spenden in heutigem Geld, zum Satz, den Sie setzen, und mit drei Sätzen gezeigt.',
  ],
  contingency: ['Unvorhergesehenes', 'Aufschlag für das, was vor Beginn der Arbeit niemand wissen kann.'],
  quote: [
    'Kostenvoranschlag',
    'Ein Preis, den jemand nannte, und bis wann er gilt. Ihre eigenen Preise sind als solche bezeichnet.',
  ],
  pledged: [
    'Vorhanden, zugesagt, erhofft',
    'Geld auf dem Konto; schriftlich versprochen; vielleicht, mit einer Wahrscheinlichkeit. Nie eine Summe.',
  ],
  tripwire: ['Auslöser', 'Was uns umstimmen würde. Bei jedem Öffnen wird es an den Daten geprüft.'],
  leftLoss: [
    'Verbleibender Abzug',
    'Fläche mal fehlendem Index, über alle Zonen, nachdem die gewählte Arbeit getan ist.',
  ],
  gate: [
    'Beginnen oder warten',
    `Oberfläche ${measure('difference', 3)} über dem Taupunkt, Luftfeuchte unter 85 % und trocken seit dem letzten Regen.`,
  ],
  batch: [
    'Charge',
    'Die Nummer des Herstellers auf der Dose. Noch nach Jahren lässt sich eine Standzeit daran halten.',
  ],
  campaign: [
    'Maßnahme',
    'Eine Behandlung vom ersten Zweifel bis zum letzten Blick danach. Die Arbeit tun andere, die Daten gehören Ihnen.',
  ],
  cause: [
    'Ursache',
    'Was den Schaden nährt: ein Regner, verstopftes Entwässerungsloch, Salz. Zuerst beseitigt, sonst kommt er wieder.',
  ],
  schedule: ['Leistungsverzeichnis', 'Die Arbeit in nummerierten Positionen mit Mengen, für alle Bieter gleich.'],
  median: ['Median', 'Der mittlere Preis. Eine Position weit davon ist eine Frage an den Bieter und kein Urteil.'],
  approval: ['Freigabe', 'Ein unterschriebenes Ja zu Probe, Farbton oder Schritt. Erst danach geht die Arbeit weiter.'],
  layer: ['Schicht', 'Ein Auftrag auf eine Zone: Lösung, Konzentration, Temperatur, Durchgänge, der Reihe nach.'],
  fireWatch: [
    'Brandwache',
    'Jemand, der nichts tut als aufzupassen, während der Flamme und eine festgesetzte Zeit danach.',
  ],
  limit: [
    'Grenze',
    'Die Hitze, die eine Einlage verträgt, gesetzt von einer benannten Fachperson für dieses Material. Ohne sie: ausbauen.',
  ],
  ladderFoot: ['Leiterfuß', 'Um ein Viertel der genutzten Länge von der Wand abgerückt.'],
  incident: [
    'Vorfall',
    'Sturm, Stoß, Farbe, Diebstahl. Sofort gemeldet; ein Rundgang danach zeigt, was es angerichtet hat.',
  ],
  seenThought: [
    'Gesehen und vermutet',
    'Was beobachtet wurde und was jemand daraus schließt, steht getrennt, auch auf Papier.',
  ],
  hazard: [
    'Gefährdung',
    'Was eine Art von Befund das Metall kosten kann, von 0,05 (nur Aussehen) bis 1. Eine Zahl mit Begründung.',
  ],
  scale: ['Skala', 'Die Zahlen, auf denen der Index beruht. Ein Wert nennt die Fassung, mit der er entstand.'],
  corrosivity: [
    'Korrosivität',
    'Wie schnell blankes Metall in der Luft eines Ortes verliert, nach ISO 9223: C1 bis CX.',
  ],
};
