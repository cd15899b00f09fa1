import type { NamesOfTrade } from '../../engine/trade';

/** Kinds of finding: the open surface, and wax and lacquer on it. */
export const kindsOnTheSurface: NamesOfTrade[string] = {
  'even-green-film': {
    name: 'Gleichmäßiger grüner Film',
    why: 'Der Schutz ist verloren, auch wenn das Metall oft nur langsam angegriffen wird.',
    looksLike: 'Helles Grün, gleichmäßig verteilt, meist auf Flächen zum Himmel hin.',
    asks: 'Färbt sich ein trockenes weißes Tuch grün?',
  },
  'green-line-at-water': {
    name: 'Blaugrüne Linie am Wasser oder Boden',
    why: 'Wechselndes Benetzen und Trocknen lässt Salz entlang einer Linie zurück.',
    looksLike: 'Ein blaugrüner Streifen dicht über Wasser, Pflaster oder Erde.',
    asks: 'Ist es Salzwasser, ein Brunnen oder Streusalz?',
  },
  'green-run-off-streak': {
    name: 'Grüne Ablaufspur',
    why: 'Lösliche Kupferverbindungen wandern mit jedem Regen.',
    looksLike: 'Blassgrüne Bahnen auf dunklem Grund, dem Lauf des Wassers folgend.',
    asks: 'Woher kommt das Wasser, und gab es dieselbe Spur schon im letzten Jahr?',
  },
  'green-spots': {
    name: 'Grüne Punkte',
    why: 'Die Beschichtung ist punktweise durchbrochen.',
    looksLike: 'Einzelne grüne Punkte in einer sonst beschichteten Oberfläche.',
    asks: 'Zuerst: Gibt es überhaupt einen Punkt? Dann erst, wie viel. Den ersten fotografieren.',
  },
  'pale-powdery-mounds': {
    name: 'Blasse, pulvrige Häufchen',
    why: 'Es können aktive Chloride sein; das zeigt nur eine Probe.',
    looksLike: 'Kleine Häufchen blassgrünen Pulvers, manchmal über einem Grübchen.',
    asks: 'Lag an dieser Stelle schon früher Pulver? Nicht abbürsten.',
  },
  'black-crust': {
    name: 'Schwarze Kruste oder Schorf',
    why: 'An ihrem Rand und unter ihr entsteht Lochfraß.',
    looksLike: 'Eine erhabene schwarze Insel oder Kruste, rau unter dem Handschuh.',
    asks: 'Ist der Rand erhaben, und liegen Grübchen daran?',
  },
  'black-crust-lifting': {
    name: 'Schwarze Kruste hebt sich ab',
    why: 'Metall, das bedeckt war, liegt neu offen.',
    looksLike: 'Kruste mit einem Spalt unter dem Rand, oder eben abgefallene Schuppen.',
    asks: 'Welche Farbe hat das Metall, wo sie abging? Die Schuppen aufheben.',
  },
  'thin-dark-area': {
    name: 'Dünne dunkle Fläche, Rand einer Ablaufspur',
    why: 'Sie haftet meist fest am Metall.',
    looksLike: 'Glatter dunkler Grund, den der Regen nicht wäscht, oder der dunkle Saum einer Bahn.',
  },
  'sooty-deposit': {
    name: 'Rußige Auflage',
    why: 'Ruß hält Säure und Feuchte an der Oberfläche.',
    looksLike: 'Stumpfes Schwarz, das am Tuch abfärbt, am dicksten in geschützten Falten.',
  },
  'finish-thinned': {
    name: 'Farbschicht ausgedünnt',
    why: 'Die Farbschicht geht verloren und kommt nicht von selbst wieder.',
    looksLike: 'Farbe heller oder durchscheinender als daneben, noch kein Metallglanz.',
    asks: 'Ist sie dünner als letztes Jahr, oder war sie so angelegt?',
  },
  tarnish: {
    name: 'Anlaufen',
    why: 'Es verändert das Aussehen und sonst wenig.',
    looksLike: 'Blankes Metall, das stumpf, braun oder irisierend geworden ist.',
  },
  'bare-by-touch': {
    name: 'Blankes Metall durch Berühren',
    why: 'Hände tragen langsam ab; es kann durch Entscheidung hingenommen sein.',
    looksLike: 'Glatter gelber Glanz, wo man sich festhält, sitzt oder streicht.',
    asks: 'Ist entschieden, dass Besucher hier berühren dürfen?',
  },
  'bare-by-abrasion': {
    name: 'Blankes Metall durch Abrieb',
    why: 'Werkspuren gehen mit der Oberfläche verloren.',
    looksLike: 'Gescheuertes gelbes Metall mit gerichteten Kratzern.',
    asks: 'Was reibt hier: ein Gurt, ein Ast, ein Mäher, eine Bürste?',
  },
  'hard-water-scale': {
    name: 'Kalkbelag',
    why: 'Er hält Feuchte und verweist auf Beregnung oder Spritzwasser.',
    looksLike: 'Weißer bis grauer Film oder Tropfränder, die ein nasses Tuch nicht löst.',
    asks: 'Erreicht ein Regner, ein Brunnen oder eine Traufe diese Zone?',
    caution: 'Kein saurer Kalklöser: Er nimmt die Farbschicht mit. Fragen Sie einen Restaurator, wie man ihn abnimmt.',
  },
  'core-salts': {
    name: 'Wachsende weiße Flecken, Salze aus dem Gusskern',
    why: 'Wasser bewegt sich durch den verbliebenen Gusskern.',
    looksLike: 'Weißliche Flecken oder Ausblühungen, die nach dem Trocknen größer wiederkommen.',
    asks: 'Größer als auf dem Foto des Vorjahrs? Liegt ein Loch oder eine Fuge darüber?',
  },
  'green-under-film': {
    name: 'Grün unter Wachs oder Lack',
    why: 'Es geht unter dem Film unbemerkt weiter.',
    looksLike: 'Grün, das durch einen noch ganzen Film scheint, oft als Fäden oder Blasen.',
    asks: 'Ist der Film darüber geschlossen? Nicht kratzen, um es herauszufinden.',
  },
  'white-haze-in-wax': {
    name: 'Weißer Schleier im Wachs',
    why: 'Feuchte oder Alter im Wachs: ein Zeichen, für sich kein Schaden.',
    looksLike: 'Milchiger Schleier im Wachs, stärker in Vertiefungen oder nach kalten Nächten.',
    asks: 'Wurde feucht oder in der Kälte gewachst?',
  },
  'wax-built-up': {
    name: 'Wachs angehäuft',
    why: 'Dickes Wachs hält Schmutz fest.',
    looksLike: 'Gelbes oder graues Wachs in Vertiefungen und um Einzelheiten.',
    caution:
      'Altes Wachs löst man mit Lösemitteln: gute Luft, Handschuhe, keine Flamme. Fragen Sie, welches die Farbschicht verträgt.',
  },
  'wax-worn': {
    name: 'Wachs lückig oder abgetragen',
    why: 'Am Ende des Jahres zu erwarten; Zeit, es zu erneuern.',
    looksLike: 'Matte Flecken neben Glanz; Wasser perlt dort nicht mehr ab.',
    asks: 'Wann wurde zuletzt gewachst, und kam man bis in diese Zone?',
  },
  'lacquer-yellow': {
    name: 'Lack vergilbt',
    why: 'Er verändert das Aussehen, bevor er versagt.',
    looksLike: 'Ein klarer Film, der gegen das Licht gelb oder braun geworden ist.',
  },
  'lacquer-chalky': {
    name: 'Lack grau, kreidend',
    why: 'Der Film steht kurz vor dem Versagen.',
    looksLike: 'Ein grauer, pulvriger Film, der am Finger weiß abfärbt.',
    asks: 'Kommt das Pulver aus dem Film oder aus dem Metall?',
  },
  'film-lifting': {
    name: 'Film hebt sich ab oder blättert',
    why: 'Wachs darüber schließt Wasser am Metall ein.',
    looksLike: 'Abstehende Ränder des Films, Schuppen oder eine Abrisskante.',
    asks: 'Was zeigt sich, wo er fehlt: blank, braun oder grün?',
  },
};

/** Metal, iron and water. */
export const kindsInTheMetal: NamesOfTrade[string] = {
  'pits-new': {
    name: 'Lochfraß, neu oder blank',
    why: 'Der Angriff geht in die Tiefe.',
    looksLike: 'Kleine Löcher mit blankem oder pulvrigem Grund.',
    asks: 'Wie viele auf einer Handbreit, und wie tief ist das tiefste?',
  },
  'pits-known': {
    name: 'Lochfraß, bekannt und stumpf',
    why: 'Er hält Salz und Wasser, auch wenn er ruht.',
    looksLike: 'Schon früher gesehene Grübchen, trocken, mit stumpfem oder gewachstem Grund.',
    asks: 'Wie auf dem früheren Foto? Blanker Grund heißt: neu.',
  },
  'crack-new': {
    name: 'Riss, neu, nässend oder versetzt',
    why: 'Er kann das Tragwerk betreffen oder von Eisen kommen, das im Inneren quillt.',
    looksLike: 'Eine zuvor nicht gesehene Linie, eine Spur daraus oder Kanten auf ungleicher Höhe.',
    asks: 'Steht eine Kante höher? Läuft Grün oder Rost heraus?',
    caution:
      'Nicht darauf drücken oder steigen. Personen fernhalten, bis jemand ihn gesehen hat, der das beurteilen darf.',
  },
  'crack-known': {
    name: 'Riss, bekannt, trocken, unverändert',
    why: 'Er muss beobachtet werden; er kann ein Gussfehler sein.',
    looksLike: 'Eine Linie aus der früheren Aufnahme: keine Spur, Kanten eben, Datumsmarken unverändert.',
    asks: 'Liegt sein Ende noch an der Marke des Vorjahrs?',
  },
  'open-joint': {
    name: 'Offene Fuge oder Naht',
    why: 'Sie lässt Wasser ein, und Frost öffnet sie.',
    looksLike: 'Ein Spalt zwischen Gussteilen, dessen Füllung geschwunden ist oder fehlt.',
    asks: 'Steht Wasser darin? Kann es unten ablaufen?',
  },
  'failed-plug': {
    name: 'Stopfen oder Flicken schadhaft',
    why: 'Dort dringt Wasser ein.',
    looksLike: 'Eine kleine eckige oder runde Ausbesserung: vorstehend, eingesunken, grün umrandet oder verloren.',
  },
  porosity: {
    name: 'Porosität, Gussfehler',
    why: 'Ruhend, solange kein Wasser darin steht.',
    looksLike: 'Gruppen feiner Löcher, seit dem Guss gleich.',
    asks: 'Feucht, wenn ringsum alles trocken ist?',
  },
  'dent-old': {
    name: 'Delle oder Kratzer, alt',
    why: 'Verändert das Aussehen und ruht.',
    looksLike: 'Eine Spur in der Farbe der Oberfläche ringsum.',
  },
  'dent-bright': {
    name: 'Delle oder Kratzer, blank',
    why: 'Er ist frisch, und vielleicht weiß jemand, woher.',
    looksLike: 'Eine Spur mit blankem Metall.',
    asks: 'Wer hat hier seit dem letzten Rundgang gearbeitet oder sich aufgehalten?',
  },
  'part-missing': {
    name: 'Verlust, fehlendes Teil',
    why: 'Eine Kante kann scharf sein, und ein Zeugnis der Herstellung ist fort.',
    looksLike: 'Ein Bruch, oder eine Stelle, an der auf früheren Fotos etwas stand.',
    asks: 'Liegt das Stück in der Nähe? Aufheben, mit Zettel und Datum.',
    caution: 'Kanten schneiden: Handschuhe, und Besucher fernhalten.',
  },
  'part-loose': {
    name: 'Loses Teil oder lose Tafel',
    why: 'Es kann auf jemanden fallen und verloren gehen.',
    looksLike: 'Ein Teil, das sich bewegt, klappert oder von seinem Bett absteht.',
    asks: 'Nur mit einem Finger berühren. Wer geht darunter vorbei?',
    caution: 'Nicht daran hängen, keine Leiter anlehnen. Personen darunter fernhalten.',
  },
  'corroded-fixing': {
    name: 'Korrodierte Befestigung',
    why: 'Sie trägt Last.',
    looksLike: 'Ein Bolzen, Dübel oder Winkel mit blätterndem Rost oder geschwächtem Schaft.',
    asks: 'Was würde sich bewegen, wenn sie nachgibt?',
    caution: 'Nicht zur Probe nachziehen. Personen von dem fernhalten, was sie trägt.',
  },
  'rust-from-inside': {
    name: 'Rostspur von innen',
    why: 'Eine Armierung oder ein Kernhalter kann quellen.',
    looksLike: 'Orangefarbene Spur aus einer Fuge, einem Stiftloch oder Riss, ohne Eisen außen, das sie erklärt.',
    asks: 'Ist die Bronze ringsum gewölbt oder gerissen?',
  },
  'weep-hole-blocked': {
    name: 'Entwässerungsloch verstopft, Wasser steht',
    why: 'Stehendes Wasser sprengt bei Frost und sickert durch den Gusskern.',
    looksLike: 'Ein mit Schmutz oder Wachs verschlossenes Loch, stehendes Wasser oder ein Fleck, der nie trocknet.',
    asks: 'Kommt Wasser, wenn das Loch frei ist?',
    caution: 'Von Hand mit etwas Weichem öffnen, niemals bohren; nicht in dem stehen, was herausläuft.',
  },
};
