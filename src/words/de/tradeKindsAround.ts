import type { NamesOfTrade } from '../../engine/trade';

/** Deposits, life, inserts and the base. */
export const kindsAround: NamesOfTrade[string] = {
  droppings: {
    name: 'Vogelkot',
    why: 'Er ist sauer und ätzt, was darunter liegt.',
    looksLike: 'Weiße und dunkle Spritzer unter einem Sitzplatz.',
    asks: 'Wo sitzen die Vögel? Gibt es ein Nest?',
    caution:
      'Vor dem Reinigen anfeuchten, Handschuhe und Maske, Hände waschen. Ein bewohntes Nest nicht stören: Es kann geschützt sein.',
  },
  'organic-stain': {
    name: 'Blattspuren, Harz, Kaugummi, Klebstoff',
    why: 'Es hält Feuchte.',
    looksLike: 'Braune Abdrücke von Blättern, klebrige Tropfen, Kaugummi oder der Kleber eines Aufklebers.',
    caution: 'Kein Lösemittel, bevor ein Restaurator gesagt hat, welches Wachs und Farbe vertragen.',
  },
  'paint-marks': {
    name: 'Farbe, Filzstift, Graffiti',
    why: 'Das falsche Lösemittel nimmt die Farbschicht mit.',
    looksLike: 'Gesprühte, gestrichene oder geschriebene Farbe, die nicht zum Werk gehört.',
    asks: 'Zuerst fotografieren, ganz und nah. Melden, wie Ihre Ordnung es verlangt.',
    caution: 'Nicht reiben, kein Lösemittel versuchen: Die erste Stunde entscheidet weniger als der falsche Reiniger.',
  },
  'algae-moss': {
    name: 'Algen oder Moos',
    why: 'Sie halten die Oberfläche feucht.',
    looksLike: 'Weiches Grün, das sich nass abwischen lässt, oder Polster in Fugen.',
    asks: 'Weich und abwischbar? Dann ist es Bewuchs und keine Korrosion.',
  },
  lichen: {
    name: 'Flechten',
    why: 'Sie können ätzen, und Schaben nimmt die Farbschicht mit.',
    looksLike: 'Flache graue, gelbe oder orangefarbene Rosetten, die fest haften.',
    caution: 'Nicht abschaben. Manche Arten sind geschützt.',
  },
  'insert-chipped': {
    name: 'Einlage abgeplatzt oder gesprungen',
    why: 'Wärme oder Wasser verschlimmert es.',
    looksLike: 'Eine Absplitterung, eine Linie oder ein Stern in Glas, Email oder Stein in der Bronze.',
    asks: 'Reicht die Linie bis zum Rand? Mit Licht von der Seite fotografieren.',
    caution: 'Kanten schneiden. Keine Flamme, kein heißes Wasser, kein Druck in der Nähe.',
  },
  'insert-loose': {
    name: 'Einlage lose, Bettung offen',
    why: 'Sie kann herausfallen.',
    looksLike: 'Ein Spalt ringsum, oder sie bewegt sich unter einem Finger.',
    asks: 'Lässt sie sich ohne Kleber halten, bis jemand kommt?',
    caution: 'Nicht hebeln oder kleben. Personen darunter fernhalten.',
  },
  'insert-missing': {
    name: 'Einlage fehlt',
    why: 'Die Kante ist scharf, und Wasser dringt ein.',
    looksLike: 'Eine leere Fassung.',
    asks: 'Liegt sie in der Nähe? Wann wurde sie zuletzt gesehen?',
    caution: 'Kanten schneiden; Stücke mit Handschuhen aufheben und verwahren.',
  },
  'insert-clouded': {
    name: 'Einlage getrübt',
    why: 'Ihre Oberfläche verändert sich.',
    looksLike: 'Eine stumpfe, irisierende oder milchige Fläche, die auch trocken so bleibt.',
    asks: 'Erst fragen, bevor Sie mit mehr als einem weichen trockenen Pinsel reinigen.',
  },
  'base-tilts': {
    name: 'Sockel neigt sich, Fuge wird weiter',
    why: 'Das ganze Werk kann fallen.',
    looksLike: 'Nicht im Lot, oder eine Fuge ist auf einer Seite weiter als zuletzt.',
    asks: 'Neigung und Fuge gemessen und aufgeschrieben?',
    caution:
      'Keine Leiter anlehnen. Personen fernhalten und die Person verständigen, die für die Standsicherheit verantwortlich ist.',
  },
  'base-joint-open': {
    name: 'Sockelfuge offen, Abplatzung oder Verfärbung',
    why: 'Sie lässt Wasser ein und beeinträchtigt das Aussehen.',
    looksLike: 'Fehlender Mörtel, schuppender Stein, grüne oder rostige Bahnen auf dem Stein.',
  },
};
