import type { helpMoney as english } from '../en/helpMoney';
import type { Same } from '../tongue';

export const helpMoney: Same<typeof english> = {
  'sculpture-options': {
    title: 'Möglichkeiten',
    what: 'Wie es mit einem Werk weitergehen kann, nebeneinander: was jeder Weg bewirkt, wie lange er hält, was er kostet, was sich nicht zurücknehmen lässt, was dagegen spricht.',
    first: 'Lesen Sie, was die Daten zeigen. Tragen Sie mindestens zwei Wege ein, einen davon „weiter wie bisher“.',
    from: 'Zuerst die Standzeiten dieser Sammlung, sonst ein veröffentlichter Bereich. Kosten sind von Ihnen oder angeboten und so gekennzeichnet.',
  },
  money: {
    title: 'Wie mit Geld gerechnet wird',
    what: 'Währung, Zinssätze und Preisanstieg für alle Berechnungen dieser Sammlung.',
    first: 'Legen Sie die Währung fest. Das Übrige lassen Sie, bis die Buchhaltung anderes sagt.',
    from: 'Sie legen es fest. Jede Summe über Jahre wird auch einen Punkt darunter und darüber gezeigt.',
  },
  budget: {
    title: 'Budget eines Jahres',
    what: 'Welche Zonen für eine gegebene Summe zu behandeln sind, was dann liegen bleibt und was mehr Geld bewirken würde.',
    first:
      'Geben Sie die Summe ein, die Sie haben. Ändern Sie sie dann nach oben und unten und lesen Sie, was sich ändert.',
    from: 'Die Auswahl, bei der am wenigsten Abzug übrig bleibt, genau bestimmt. Die Preise sind Ihre eigenen, bis ein Angebot vorliegt.',
  },
  funds: {
    title: 'Fonds',
    what: 'Geld, das für eine Behandlung und für die Pflege danach gesammelt wird.',
    first: 'Eröffnen Sie einen aus der gewählten Möglichkeit; deren Kosten kommen mit.',
    from: 'Drei Arten von Geld stehen getrennt und werden nie zu einer Summe addiert.',
  },
  fund: {
    title: 'Ein Fonds',
    what: 'Was er bezahlen muss, was da ist, was zugesagt und erhofft ist und wann es reichen könnte.',
    first: 'Tragen Sie die Spenden einzeln ein, jede mit ihrem Brief und ihrer Bedingung.',
    from: 'Kosten steigen mit den Preisen, die Sie setzen. Der Zieltag folgt aus den bisherigen Einnahmen und ist eine Spanne.',
  },
  decisions: {
    title: 'Entscheidungen',
    what: 'Was entschieden wurde und warum, was abgelehnt wurde und warum, wer dagegen sprach und was uns umstimmen würde.',
    first:
      'Schreiben Sie die nächste Entscheidung mit mindestens einem Auslöser auf. Nichts zu tun ist auch eine Entscheidung.',
    from: 'Sie schreiben es. Die App beobachtet die Auslöser und sagt, wenn einer eingetreten ist.',
  },
};
