import type { reasonsOfRound as english } from '../en/reasonsOfRound';
import type { Same } from '../tongue';

const question: Readonly<Record<string, string>> = {
  origin: 'ob es Schmutz ist, ein Fleck von oben oder im Metall',
  extent: 'wie viel davon da ist',
  severity: 'wie schwer es ist',
  against: 'wie es zum früheren Wert steht',
};

/** Why a zone cannot be left like this yet, or a deed of the round was not done. */
export const reasonsOfRound: Same<typeof english> = {
  'round: not here': () =>
    'Dieser Rundgang ist nicht auf diesem Gerät. Gehen Sie zur Skulptur zurück und öffnen Sie ihn neu.',
  'round: sculpture has no zones': () =>
    'Diese Skulptur hat noch keine Zonen. Legen Sie ihre Zonen an, und beginnen Sie dann den Rundgang.',
  'round: zone not here': () =>
    'Diese Zone gehört nicht zu diesem Rundgang. Gehen Sie zur Liste der Zonen zurück und wählen Sie eine andere.',
  'round: not to be rated again': () =>
    'Diese Zone gehört nicht zu denen, nach denen noch einmal gefragt wird. Fahren Sie mit dem Rundgang fort.',
  'round: finding not finished': (s) =>
    `${s.kind('kind')} ist nicht fertig: Sagen Sie, ${question[s.text('question')] ?? 'was noch fehlt'}, oder nehmen Sie den Befund zurück.`,
  'round: not looked, yet something recorded': (s) =>
    `${s.kind('kind')} ist hier erfasst, die Zone wurde also angesehen. Nehmen Sie das zuerst zurück, oder machen Sie weiter.`,
  'round: nothing found, yet something recorded': (s) =>
    `${s.kind('kind')} ist hier erfasst, es wurde also etwas gefunden. Nehmen Sie das zuerst zurück, oder machen Sie weiter.`,
  'round: earlier finding not answered': (s) =>
    Number(s.text('n')) > 1
      ? `${s.times('n', 'früherer Befund', 'frühere Befunde')} dieser Zone haben noch keine Antwort, darunter ${s.kind('kind')}. Sagen Sie zu jedem, was er jetzt ist oder dass er fort ist.`
      : `${s.kind('kind')} war früher hier und hat noch keine Antwort. Sagen Sie, was es jetzt ist oder dass es fort ist.`,
  'round: no earlier round': () =>
    'Es gibt keinen früheren Rundgang, aus dem sich eine Antwort übernehmen ließe. Sehen Sie hin, und erfassen Sie, was Sie sehen.',
  'round: stop word is not carried': (s) =>
    `${s.kind('kind')} ist ein Stoppbegriff und wird nie übernommen. Sehen Sie hin, und erfassen Sie, was Sie sehen.`,
  'round: nothing said yet': () =>
    'Zu dieser Zone ist noch nichts gesagt. Erfassen Sie einen Befund, oder sagen Sie, dass nichts gefunden wurde.',
};
