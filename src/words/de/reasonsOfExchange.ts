import type { reasonsOfExchange as english } from '../en/reasonsOfExchange';
import type { Params } from '../en/sentence';
import type { Same } from '../tongue';

/** "in Eintrag 12 (finding), bei entries[11].body.coverage". */
const place = (s: Params): string =>
  Number(s.text('entry')) > 0
    ? `in Eintrag ${s.text('entry')} (${s.text('kind')}), bei ${s.text('where')}`
    : `bei ${s.text('where')}`;

/** What is wrong in a survey file and where, what to do about it, and what is worth saying of one that is taken. */
export const reasonsOfExchange: Same<typeof english> = {
  'empty file': () => 'Die Datei ist leer.',
  'file too large': (s) =>
    `Die Datei hat ${s.number('megabytes')} MB; gelesen werden können bis zu ${s.number('most')} MB.`,
  'a zip file': () => 'Das ist eine gepackte Datei (ZIP), keine Datei einer Bestandsaufnahme.',
  'not UTF-8': () => 'Die Datei enthält Bytes, die kein Text sind: Sie wurde unterwegs beschädigt.',
  'file cut off': () => 'Die Datei endet mittendrin: Sie wurde unterwegs abgeschnitten.',
  'not JSON': () =>
    'Die Datei ist nicht lesbar: Ihr Text hat nicht die Form einer Bestandsaufnahme oder wurde beschädigt.',
  'not a survey': () => 'Das ist keine Bestandsaufnahme von Patina Round.',
  'version not readable': (s) =>
    `Die Datei sagt nicht, in welcher Version des Formats sie geschrieben ist („${s.text('found')}“).`,
  'newer format': (s) =>
    `Die Datei stammt von einer neueren Version (Format ${s.text('found')}); diese liest bis ${s.text('known')}.`,
  'check does not match': () =>
    'Die Prüfsumme der Datei passt nicht zum Inhalt: Sie wurde nach dem Schreiben beschädigt oder geändert.',
  'too many entries': (s) =>
    `Die Datei enthält ${s.number('count')} Einträge; gelesen werden können bis zu ${s.number('most')}.`,
  'nested too deep': (s) =>
    `Etwas in der Datei ist tiefer als ${s.number('most')} Ebenen verschachtelt, bei ${s.text('where')}.`,
  'name not allowed': (s) => `Der Name „${s.text('found')}“ darf nicht verwendet werden, bei ${s.text('where')}.`,
  'same name twice': (s) => `Der Name „${s.text('found')}“ steht zweimal da, bei ${s.text('where')}.`,
  'text too long': (s) => `Ein Text ist länger als ${s.number('most')} Zeichen, bei ${s.text('where')}.`,
  'broken character': (s) => `Ein Text enthält ein fehlerhaftes Zeichen, bei ${s.text('where')}.`,
  'number not exact': (s) => `Die Zahl ${s.text('found')} lässt sich nicht genau aufbewahren, bei ${s.text('where')}.`,
  'number too large': (s) => `Die Zahl ${s.text('found')} ist zu groß, bei ${s.text('where')}.`,
  'value missing': (s) => `Etwas fehlt ${place(s)}.`,
  'wrong sort of value': (s) => `„${s.text('found')}“ ist von falscher Art, ${place(s)}.`,
  'number out of range': (s) =>
    `${s.text('found')} liegt nicht zwischen ${s.text('least')} und ${s.text('most')}, ${place(s)}.`,
  'word not known': (s) => `Das Wort „${s.text('found')}“ ist keines von denen, die dort stehen dürfen, ${place(s)}.`,
  'not a date': (s) => `„${s.text('found')}“ ist kein Datum, ${place(s)}.`,
  'not an id': (s) => `„${s.text('found')}“ ist keine Eintragsnummer, ${place(s)}.`,
  'too long or too short': (s) => `Etwas ist zu lang oder zu kurz ${place(s)}.`,
  'range ends out of order': (s) => `Das untere Ende liegt über dem Wert oder das obere darunter, ${place(s)}.`,
  'shares do not add up': (s) => `Die Anteile ergeben nicht 100 %, ${place(s)}.`,
  'name does not fit': (s) =>
    `Der Name „${s.text('found')}“ passt nicht zu dem, wovon er spricht (er müsste „${s.text('fitting')}“ sein), ${place(s)}.`,
  'within another': (s) =>
    `Als Zugehörigkeit steht „${s.text('found')}“, wo „${s.text('fitting')}“ stehen müsste, ${place(s)}.`,
  'refers to another kind': (s) =>
    `Es verweist auf „${s.text('found')}“, wo „${s.text('fitting')}“ stehen müsste, ${place(s)}.`,
  'refers to itself': (s) => `Es verweist auf sich selbst, ${place(s)}.`,
  'one id, two contents': (s) => `Die Eintragsnummer ${s.text('id')} steht zweimal mit zwei Inhalten da, ${place(s)}.`,
  'replaces itself': (s) => `Ein Eintrag sagt, er ersetze sich selbst, ${place(s)}.`,
  'replaces what is not in the file': (s) =>
    `Ein Eintrag ersetzt „${s.text('found')}“, das nicht in der Datei ist, ${place(s)}.`,
  'replaces across things': (s) => `Ein Eintrag ersetzt einen über etwas anderes („${s.text('found')}“), ${place(s)}.`,
  'replaces in a circle': (s) => `Einträge ersetzen einander im Kreis, ${place(s)}.`,
  'erasure changed': (s) =>
    `Gelöschtes bleibt gelöscht, doch die Datei nennt eine Löschung neu oder nimmt sie zurück, ${place(s)}.`,
  'more problems': (s) => `Und ${s.times('count', 'weiterer Fehler', 'weitere Fehler')} dieser Art.`,

  'get the file again': () =>
    'Geben Sie sie auf dem Gerät, von dem sie kommt, noch einmal mit, und öffnen Sie diese Datei.',
  'update this app': () =>
    'Öffnen Sie diese App einmal mit Netz, damit sie sich erneuert, und öffnen Sie die Datei dann noch einmal.',
  'choose another file': () => 'Wählen Sie die Datei, deren Name auf .survey.json endet.',
  'carry fewer sculptures': () => 'Geben Sie sie noch einmal mit weniger Skulpturen je Datei mit.',
  'ask who made the file': () =>
    'Fragen Sie die Person, die die Datei angelegt hat, wie sie geschrieben oder geändert wurde.',

  'written by a newer version': (s) =>
    `Die Datei stammt von einer neueren Version (Format ${s.text('found')}; diese kennt ${s.text('known')}). Was diese nicht kennt, wird aufbewahrt, wie es kam.`,
  'kinds not known': (s) =>
    `${s.times('count', 'Eintrag ist', 'Einträge sind')} von Arten, die diese Version nicht kennt (${s.text('kinds')}): aufbewahrt, wie sie kamen, gezeigt und nicht bewertet.`,
  'kept at home': (s) =>
    `${s.times('count', 'Verweis zeigt', 'Verweise zeigen')} auf etwas, das weggelassen wurde und „zu Hause behalten“ lautet.`,
  'erased left out': (s) =>
    `${s.times('count', 'Eintrag ist', 'Einträge sind')} weggelassen, weil die Datei selbst sagt, dass sie gelöscht wurden.`,
};
