import type { reasonsOfInStep as english } from '../en/reasonsOfInStep';
import type { Same } from '../tongue';

/** Why a device does not keep in step, and what it found in the folder. */
export const reasonsOfInStep: Same<typeof english> = {
  'step: not switched on': () => 'Der Abgleich ist nicht eingeschaltet.',
  'step: under way already': () => 'Ein Abgleich läuft schon. Warten Sie, bis er endet.',
  'step: password needed': () =>
    'Das Passwort für den Ordner bleibt nur gespeichert, solange die App offen ist. Geben Sie es noch einmal ein, um weiter abzugleichen.',
  'step: folder to be let in': (s) =>
    `Der Browser fragt noch einmal, bevor die App den Ordner „${s.text('name')}“ nutzen darf. Lassen Sie sie hinein.`,
  'step: invented': () =>
    'Die erfundene Sammlung wird mit nichts abgeglichen. Tun Sie es von Ihrer eigenen Sammlung aus.',
  'step: other collection': (s) =>
    `Der Ordner enthält eine andere Sammlung („${s.text('theirs')}“) als dieses Gerät („${s.text('here')}“). Es wurde nichts gelesen oder geschrieben. Nehmen Sie für jede Sammlung einen eigenen Ordner. Sollen beide eine sein, beginnen Sie auf diesem Gerät mit dem Ordner, bevor etwas eingetragen ist.`,
  'step: several collections': () =>
    'Der Ordner enthält Dateien von mehr als einer Sammlung. Es wurde nichts gelesen oder geschrieben. Nehmen Sie einen leeren Ordner.',
  'step: no picker': () =>
    'Dieser Browser lässt eine App keinen Ordner nutzen. Nehmen Sie den Ordner auf dem Server, oder geben Sie Dateien mit.',
  'step: left off': () => 'Abgebrochen. Was hinüberging, bleibt; der nächste Abgleich macht dort weiter.',

  'step: file passed over': (s) =>
    `„${s.text('path')}“ im Ordner ist halb geschrieben oder wurde verändert und ist übergangen. Bleibt es so, gleichen Sie auf dem Gerät, das es geschrieben hat, noch einmal ab.`,
  'step: file waits': (s) =>
    `„${s.text('path')}“ baut auf Einträgen auf, die noch nicht im Ordner sind. Es wird hereingeholt, sobald sie es sind.`,
  'step: file of another collection': (s) =>
    `„${s.text('path')}“ im Ordner gehört zu einer anderen Sammlung und ist übergangen.`,
  'step: photo in the folder altered': (s) =>
    `„${s.text('path')}“ im Ordner ist nicht das Foto, das sein Name nennt, und wurde nicht übernommen. Löschen Sie diese Datei; ein Gerät, das das Foto hat, schreibt es neu.`,
  'step: photo here altered': (s) =>
    `Das Foto für „${s.text('path')}“ ist auf diesem Gerät beschädigt und wurde nicht geschrieben. Sehen Sie unter „Sicher aufbewahren“ alles durch.`,
  'step: copied tablet': () =>
    'Ein anderes Gerät schreibt unter dem Namen dieses Geräts: eines ist eine Kopie des anderen. Dieses Gerät hat jetzt einen eigenen Namen. Nichts ist verloren.',

  'deed: kept in step': (s) => `abgeglichen, ${s.number('entries')} Einträge`,
};
