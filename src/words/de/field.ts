import type { field as english } from '../en/field';
import type { Same } from '../tongue';

/** Was auf der Leiter mitgeht: wer das Gerät hält, nasses Glas, Akku, Platz, Tasten. */
export const field: Same<typeof english> = {
  who: {
    title: 'Wer arbeitet jetzt?',
    what: 'Dieses Tablet wurde eine halbe Stunde oder länger nicht berührt. Bei jedem Eintrag steht, wer gerade arbeitet.',
    still: (role: string) => `Weiterhin ${role}`,
    set: (role: string) => `Jetzt arbeitet: ${role}.`,
  },
  glass: {
    setting: 'Nasses Glas',
    settingWhat:
      'Bei Regen oder Sprühwasser: Berührungen, die kürzer sind als die eines Fingers, bewirken auf den Seiten des Rundgangs nichts, und das Glas lässt sich sperren.',
    row: 'Nasses Glas: Sehr kurze Berührungen bewirken nichts.',
    lock: 'Glas sperren',
    locked: 'Das Glas ist gesperrt',
    lockedWhat: 'Keine Berührung bewirkt etwas. Ihre Eingaben sind gespeichert.',
    unlock: 'Gedrückt halten, um weiterzumachen',
  },
  keepHolding: 'Weiter halten …',
  holdWhat: 'Einen Moment gedrückt halten',
  battery: {
    low: (percent: number) => `Akku bei ${percent} %`,
    lowWhat:
      'Jede Berührung ist schon gespeichert. Schließen Sie diese Zone ab, steigen Sie herunter und laden Sie, oder nehmen Sie den anderen Akku. In der Kälte scheint er leerer, als er ist.',
    understood: 'Verstanden',
  },
  full: {
    title: 'Dieses Tablet ist voll',
    what: 'Ihre letzte Eingabe ist womöglich nicht gespeichert, vor allem Fotos nicht. Geben Sie eine Tasche mit und nehmen Sie dann frühere Fotos vom Gerät.',
    room: 'Platz schaffen',
    understood: 'Verstanden',
  },
  keys: {
    title: 'Tasten am Schreibtisch',
    what: 'Ein ganzer Rundgang lässt sich machen, ohne das Glas zu berühren.',
    rows: [
      ['Tab, Umschalt + Tab', 'zum nächsten oder vorigen Bedienfeld; ein kräftiger Rahmen zeigt, wo Sie sind'],
      ['Eingabe, Leertaste', 'das Bedienfeld berühren'],
      ['Pfeiltasten', 'von Antwort zu Antwort innerhalb einer Frage, oder von Feld zu Feld'],
      ['Pos1, Ende', 'erste oder letzte Antwort einer Frage'],
      ['Esc', 'schließt, was über der Seite aufging; in einer Zone zurück zur Liste'],
      ['Strg + Z, ⌘ + Z', 'nimmt die letzte Berührung zurück, außer in Text, den Sie gerade schreiben'],
    ],
  },
};
