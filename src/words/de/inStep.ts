import type { inStep as english } from '../en/inStep';
import type { Same } from '../tongue';

export const inStep: Same<typeof english> = {
  title: 'Abgleichen',
  lead: 'Ein gemeinsamer Ordner, und jedes Tablet, das dort liest und schreibt, hat dieselbe Bestandsaufnahme. Ausgeschaltet, bis Sie es einschalten; sonst wird nie etwas gesendet.',
  notInvented: 'Die erfundene Sammlung wird mit nichts abgeglichen',
  notInventedWhat: 'Abgeglichen wird nur Ihre eigene Sammlung.',

  serverTitle: 'Der Ordner auf dem Server',
  serverLead:
    'Ein Ordner auf dem Server, von dem diese App kam. Wer den Server betreut, gibt Ihnen einen Namen und ein Passwort.',
  account: 'Name',
  password: 'Passwort',
  passwordHint: 'Nur behalten, solange die App offen ist, und auf diesem Gerät nie aufgeschrieben.',
  accountMissing: 'Geben Sie den Namen ein, unter dem der Server Sie kennt.',
  passwordMissing: 'Geben Sie das Passwort ein.',
  switchOn: 'Einschalten',

  pickTitle: 'Ein Ordner dieses Geräts',
  pickLead:
    'Auf einem Stick, einem Laufwerk oder ein Ordner, den ein anderes Programm auf mehreren Geräten gleich hält. Der Browser fragt dann, ob die App dort Dateien bearbeiten darf: Bis Sie es zulassen, beginnt nichts.',
  pick: 'Ordner wählen',
  pickNot:
    'Dieser Browser lässt eine App keinen Ordner verwenden. Nehmen Sie den Ordner auf dem Server, oder geben Sie Dateien mit.',

  goes: 'Alles geht in den Ordner, auch Personennamen und Fotos, und liegt dort unverschlüsselt. Wer den Ordner öffnen kann, kann es lesen.',
  begin:
    'Alle Tablets müssen von derselben Sammlung ausgehen: Richten Sie sie auf einem ein, schalten Sie dort zuerst ein, und hier, bevor etwas eingegeben wird.',

  where: { server: (host: string) => `Der Ordner auf ${host}`, picked: (folder: string) => `Der Ordner „${folder}“` },
  since: (day: string) => `Eingeschaltet seit ${day}.`,
  lastAt: (day: string, time: string) => `Zuletzt abgeglichen am ${day}, ${time}.`,
  never: 'Noch nicht abgeglichen.',
  waiting: (entries: string, photos: string) => `Hier wartet noch: ${entries} und ${photos}.`,
  nothingWaits: 'Hier wartet nichts.',
  entries: (n: number, figure: string) => (n === 1 ? '1 Eintrag' : `${figure} Einträge`),
  photos: (n: number, figure: string) => (n === 1 ? '1 Foto' : `${figure} Fotos`),
  came: (entries: string, photos: string) => `Hereingeholt: ${entries}, ${photos}.`,
  went: (entries: string, photos: string) => `Geschrieben: ${entries}, ${photos}.`,
  erased: (n: number) =>
    n === 1
      ? '1 Eintrag hier wurde anderswo gelöscht und ist fort.'
      : `${n} Einträge hier wurden anderswo gelöscht und sind fort.`,
  byItself:
    'Geschieht von selbst: kurz nachdem Sie etwas eingeben, wenn das Netz wieder da ist, und alle zehn Minuten.',
  stepNow: 'Jetzt abgleichen',
  switchOff: 'Ausschalten',
  switchedOff: 'Ausgeschaltet. Was im Ordner liegt, bleibt dort.',
  done: 'Abgeglichen.',
  doing: {
    reading: 'Gelesen wird, was andere geschrieben haben',
    writing: 'Geschrieben wird, was im Ordner fehlt',
    photos: 'Fotos in beide Richtungen',
  },
  starting: 'Der Ordner wird durchgesehen',
  stoppedTitle: (day: string, time: string) => `Der Abgleich vom ${day}, ${time} kam nicht zu Ende`,

  again: 'Passwort noch einmal eingeben',
  againDo: 'Weiter',
  letIn: 'Zugriff wieder erlauben',
  letInWhat: 'Der Browser fragt jedes Mal, wenn die App geschlossen war.',

  who: 'Wer dabei ist',
  thisTablet: 'Dieses Tablet',
  tablet: (n: number) => `Tablet ${n}`,
  wrote: (entries: string, day: string) => `${entries} im Ordner, der letzte vom ${day}`,
  wroteNothing: 'noch nichts im Ordner',

  found: 'Im Ordner belassen, wie es ist',
  elsewhere: 'Ohne gemeinsamen Ordner',
  elsewhereLead:
    'Dasselbe geht von Hand: Geben Sie die Bestandsdatei oder die Tasche von einem Tablet mit, öffnen Sie sie auf dem anderen, und umgekehrt. In beliebiger Reihenfolge, so oft Sie wollen: Nichts zählt doppelt.',
};
