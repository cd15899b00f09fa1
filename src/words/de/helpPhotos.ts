import type { helpPhotos as english } from '../en/helpPhotos';
import type { Same } from '../tongue';

export const helpPhotos: Same<typeof english> = {
  'sculpture-stations': {
    title: 'Standpunkte',
    what: 'Die Stellen, von denen jedes Jahr dasselbe Foto entsteht, mit Richtung, Höhe, Licht und dem, worauf gezielt wird.',
    first:
      'Beginnen Sie mit einem Standpunkt vor der schlechtesten Seite. Markieren Sie die Stelle am Boden und schreiben Sie, wie man sie findet.',
    from: 'Sie schreiben es oder übernehmen es von einem früheren Foto, das gelungen ist.',
  },
  'sculpture-shots': {
    title: 'Aufnahmeliste',
    what: 'Welche Fotos diesem Rundgang noch fehlen: jeder Standpunkt, jedes Quadrat, Befunde ohne Foto.',
    first:
      'Beginnen Sie mit dem Standpunkt, für den das Licht gerade stimmt. Jedes Foto wird abgehakt, sobald es gespeichert ist.',
    from: 'Standpunkte und Quadrate dieses Werks, gehalten an die Fotos des gezeigten Rundgangs.',
  },
  cards: {
    title: 'Karten zum Drucken',
    what: 'Karten, die mit im Foto stehen: Sie sagen, welches Werk, welche Stelle und wie groß.',
    first:
      'Drucken Sie eine mit 100 % und legen Sie ein Lineal an ihren Balken: Er muss 100 mm messen. Dann die übrigen auf mattes, festes Papier.',
    from: 'Die Graustufen zeigen zu viel oder zu wenig Licht. Kein Heimdrucker druckt neutrales Grau; Farbe wird daran nicht abgelesen.',
  },
  'sculpture-photos': {
    title: 'Fotos',
    what: 'Alle Fotos des Werks und die, von denen noch zu sagen ist, was sie zeigen.',
    first: 'Wählen Sie nach dem Tag viele auf einmal. Ordnen Sie dann zu: Standpunkt, Zone oder Befund.',
    from: 'Die Bilddaten bleiben, wie die Kamera sie machte. Nur der Ort wird entfernt, wenn Sie ihn nicht behalten wollen.',
  },
  'sculpture-viewfinder': {
    title: 'Sucher',
    what: 'Die Kamera mit dem früheren Foto als dünner Zeichnung darüber, damit Sie stehen, wo Sie standen.',
    first:
      'Gehen Sie zur Markierung, bleiben Sie stehen, sehen Sie hinter sich. Bringen Sie die Kanten zur Deckung und lösen Sie aus.',
    from: 'Die Zeichnung entsteht aus den Kanten des früheren Fotos von diesem Standpunkt.',
  },
  'sculpture-compare': {
    title: 'Fotos vergleichen',
    what: 'Dieselbe Stelle in zwei Jahren: nebeneinander, mit dem Wischer, im Wechsel und als Karte, wo Grün kam oder ging.',
    first:
      'Wählen Sie einen Standpunkt mit mehreren Jahren. Beginnen Sie mit „Wechseln“: Das Auge merkt, was sich bewegt.',
    from: 'Punktepaare bringen die Fotos zur Deckung. Bleiben unter 1 % der Breite übrig, gibt es eine Karte der Veränderung; über 3 % ist es nicht derselbe Standpunkt.',
  },
  'sculpture-strip': {
    title: 'Alle Jahre in einer Reihe',
    what: 'Jedes Foto eines Standpunkts vom ersten Jahr bis zum letzten, auf das letzte gelegt.',
    first: 'Gehen Sie die Reihe einmal als Ganzes durch. Dann wählen Sie zwei Nachbarn zum Vergleich.',
    from: 'Unter jedem steht, was schlecht passt: anderes Licht, nass oder zu weit daneben.',
  },
  'measure-zone': {
    title: 'Auf einem Foto messen',
    what: 'Wie viel einer Zone ein Befund auf einem Foto bedeckt: durch Umfahren, durch Punkte oder durch Farben, auf die Sie zeigen.',
    first: 'Prüfen Sie, ob der Ausschnitt stimmt. Im Zweifel Punkte: 49-mal tippen, und die Unsicherheit ist bekannt.',
    from: 'Ein Anteil an diesem Foto, nicht an der Zone. Er steht neben dem, was das Auge sagte, und ersetzt es nie.',
  },
  'measure-sentinel': {
    title: 'Ein Quadrat messen',
    what: 'Was die 10 × 10 cm eines Beobachtungsquadrats auf einem Foto bedeckt.',
    first: 'Legen Sie den Rahmen auf die vier Ecken und zählen Sie Punkte. Derselbe Rahmen, dieselbe Zahl, jedes Jahr.',
    from: 'Punkte, mit der Spanne nach Wilson.',
  },
};
