import type { campaign as english } from '../en/campaign';
import type { Same } from '../tongue';
import { bids, quantities } from './campaignBids';
import { approvals, card, papers } from './campaignPapers';

const count = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

export const campaign: Same<typeof english> = {
  title: 'Maßnahmen',
  lead: 'Eine Behandlung vom ersten Zweifel bis zum letzten Blick danach. Die Ursachen kommen zuerst.',
  notHere: 'Diese Maßnahme ist nicht auf diesem Gerät',
  toWorks: 'Zu den Skulpturen',
  none: 'Noch keine Maßnahme',
  noneWhat:
    'Eröffnen Sie eine, wenn Pflege nicht mehr genügt: Sie hält Leistungsverzeichnis, Angebote, Freigaben und Berichte an einem Ort.',
  open: 'Maßnahme eröffnen',
  opened: (day: string) => `eröffnet am ${day}`,
  line: (step: string, day: string) => `${step} · eröffnet am ${day}`,
  givenUp: (why: string) => `Aufgegeben: ${why}`,

  causes: {
    title: 'Ursachen zuerst',
    lead: 'Was den Schaden nährt, wird gesucht und behoben, bevor die Oberfläche behandelt wird.',
    waits: 'Noch nicht geklärt',
    settled: 'Geklärt',
    add: 'Ursache eintragen',
    lookFor: 'Wonach hier zu suchen ist',
    lookForWhat: 'Nach der Lage der Zonen und dem, was sie erreicht.',
    answer: (name: string) => `Beantworten: ${name}`,
    signs: 'Woran man es sieht',
    remedy: 'Was hilft',
    who: 'Wessen Aufgabe',
    states: {
      open: 'noch wirksam',
      'being removed': 'wird beseitigt',
      removed: 'beseitigt',
      'cannot be removed': 'lässt sich nicht beseitigen',
      'not a cause': 'hier keine Ursache',
    },
    whole: 'ganzes Werk',
    zones: (letters: string) => `Zone ${letters}`,
    edit: 'Ursache ändern',
    sort: 'Was',
    where: 'Zonen, die sie erreicht',
    whereHint: 'Keine gewählt: das ganze Werk.',
    state: 'Stand',
    found: 'Festgestellt am',
    changed: 'Beseitigt oder geändert am',
    seen: 'Was darauf hinweist',
    why: 'Warum',
    save: 'Speichern',
    remove: 'Entfernen',
    saved: 'Die Ursache ist gespeichert.',
    removed: 'Die Ursache ist entfernt.',
    link: 'Ursachen an diesem Werk',
  },

  sheet: {
    add: 'Maßnahme eröffnen',
    edit: 'Maßnahme ändern',
    name: 'Name',
    nameHint: 'Das Werk oder der Teil: „Treppe, Nordseite“.',
    nameMissing: 'Geben Sie ihr einen Namen.',
    opened: 'Eröffnet am',
    step: 'Wo sie steht',
    option: 'Möglichkeit, der sie folgt',
    decision: 'Entscheidung, auf der sie beruht',
    fund: 'Fonds, der sie bezahlt',
    noneOf: 'noch keine Angabe',
    began: 'Erster Arbeitstag',
    ended: 'Letzter Arbeitstag',
    accepted: 'Abgenommen am',
    warrantyUntil: 'Gewährleistung bis',
    warrantyWho: 'Wer dafür einsteht',
    warrantyTerms: 'Wofür',
    givenUp: 'Aufgegeben: warum',
    note: 'Notiz',
    save: 'Speichern',
    remove: 'Entfernen',
    saved: 'Die Maßnahme ist gespeichert.',
    removed: 'Die Maßnahme ist entfernt. Was dazu geschrieben wurde, bleibt.',
    dayMissing: 'Geben Sie an, an welchem Tag.',
  },

  overview: {
    now: 'Jetzt',
    next: (step: string) => `Weiter zu: ${step}`,
    nextSaid: (step: string) => `Jetzt bei: ${step}.`,
    nextAllTheSame: (step: string) => `Trotzdem weiter: ${step}`,
    decides: (who: string) => `Es entscheidet: ${who}.`,
    lacks: 'Noch verlangt',
    there: 'Vorhanden',
    nothing: 'In den Einträgen steht diesem Schritt nichts entgegen.',
    leftOpen: 'Unterwegs offen geblieben',
    leftOpenWhat: 'Die Maßnahme ist darüber hinweggegangen, obwohl etwas fehlte.',
    steps: 'Alle Schritte',
    stepsLead: 'Wo sie steht, sagen Sie; was vorhanden ist, wird aus den Einträgen gelesen.',
    states: { done: 'erledigt', 'left open': 'offen geblieben', now: 'jetzt', ahead: 'noch davor' },
    byWord: 'nach Ihrer Angabe',
    papers: 'Unterlagen und Einträge',
    facts: 'Angaben',
    change: 'Ändern',
    quantities: 'Leistungsverzeichnis',
    quantitiesWhat: (n: number) => (n === 0 ? 'noch nicht angelegt' : count(n, 'Position', 'Positionen')),
    bids: 'Angebote',
    bidsWhat: (n: number) => (n === 0 ? 'noch keine' : count(n, 'Angebot', 'Angebote')),
    request: 'Anfrage: Ist sie vollständig?',
    proposals: 'Vorschläge: Sind sie vollständig?',
    report: 'Bericht: Ist er vollständig?',
    paperWhat: (unseen: boolean, missing: number) =>
      unseen
        ? 'nicht durchgesehen'
        : missing === 0
          ? 'vollständig'
          : missing === 1
            ? '1 Punkt fehlt oder wurde nicht gesucht'
            : `${missing} Punkte fehlen oder wurden nicht gesucht`,
    approvals: 'Freigaben und vereinbarter Farbton',
    approvalsWhat: (n: number, cards: number) =>
      n + cards === 0
        ? 'noch keine'
        : `${count(n, 'Antwort', 'Antworten')}, ${count(cards, 'Farbtonkarte', 'Farbtonkarten')}`,
    layers: 'Farbschichten',
    layersWhat: (n: number) => (n === 0 ? 'noch keine' : count(n, 'Schicht', 'Schichten')),
    hotDays: 'Tage mit Heißarbeit',
    hotDaysWhat: (n: number) => (n === 0 ? 'noch keine' : count(n, 'Tag', 'Tage')),
    inserts: 'Einlagen und Hitze',
    access: 'Zugang',
    toPlan: 'Planung des Werks',
    defer:
      'Was abgenommen, erhitzt und gefärbt wird, mit welchen Mitteln und bis zu welchem Farbton, ist Sache des Restaurators, der Werkstatt und derer, die Rechte am Werk haben. Diese Seite plant es und hält es fest.',
  },

  quantities,
  bids,
  papers,
  approvals,
  card,
};
