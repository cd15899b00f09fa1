import type { helpPapers as english } from '../en/helpPapers';
import type { Same } from '../tongue';

export const helpPapers: Same<typeof english> = {
  papers: {
    title: 'Papiere',
    what: 'Alles, was sich drucken oder aushändigen lässt: für Vorstand, Versicherung, Bieter, Restaurierung und für Ihre Nachfolge.',
    first: 'Wählen Sie, wer es lesen wird, dann das Werk. Sehen Sie die Seite an, bevor Sie drucken.',
    from: 'Jedes Papier entsteht aus den Daten in dem Augenblick, in dem Sie es öffnen. Was nicht angesehen wurde, steht zuerst.',
  },
  paper: {
    title: 'Ein Papier',
    what: 'Das Papier, wie es gedruckt wird. Es lässt sich hier drucken oder als eine Datei speichern, die sich ohne diese App öffnet.',
    first:
      'Lesen Sie, was ihm nach eigener Angabe fehlt. Fügen Sie Ihre Worte ein, wo Platz dafür ist, dann drucken Sie.',
    from: 'Der Fuß jeder Seite nennt Tag, Verfasser, Entwurf oder Endfassung und ein Zeichen der Bestandsaufnahme, aus der es entstand.',
  },
  'papers-kept': {
    title: 'Wo etwas aufbewahrt wird',
    what: 'Schlüssel, Musterplatten, Proben, Negative, Kopien des Archivs: was kein Tablet enthält und eines Tages jemand sucht.',
    first: 'Schreiben Sie auf, was sonst niemand fände. Sehen Sie dann einmal im Jahr nach, ob es noch da ist.',
    from: 'Sie schreiben es, mit dem Tag, an dem es zuletzt jemand dort sah. Es kommt in den Brief an die Nachfolge.',
  },
  'sculpture-conservator-page': {
    title: 'Das Blatt für die Restaurierung',
    what: 'Was Sie fragen, mit Platz für Antworten: gedruckt und von Hand ausgefüllt oder hier nach dem Blatt eingetragen.',
    first:
      'Schreiben Sie Ihre Frage und drucken Sie das Blatt für den Besuch. Tragen Sie danach ein, was darauf steht, unter dem Namen der Person.',
    from: 'Die Antworten sind Vermutungen mit Namen und Tag. An dem, was gesehen wurde, ändern sie nichts.',
  },
};
