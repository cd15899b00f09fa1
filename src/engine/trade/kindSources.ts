import type { Source } from './source';

const hazardOurs = 'Hazard: our own judgement, no published weights exist.';

/** Sources the rows of findings share. The hazard in every row is this project's own choice, whatever its behaviour rests on. */
export const kindSource = {
  stages: {
    text: `${hazardOurs} Behaviour: the five-stage course of outdoor bronze, US General Services Administration bronze standard.`,
    sure: 'own choice',
  },
  chloride: {
    text: `${hazardOurs} Behaviour: chloride corrosion is told by a chemical spot test, not by eye; Guidelines for the Technical Examination of Bronze Sculpture, Getty 2025.`,
    sure: 'own choice',
  },
  soluble: {
    text: `${hazardOurs} Behaviour: soluble copper compounds move with rain; Selwyn and others 1996, Studies in Conservation 41 (abstract).`,
    sure: 'own choice',
  },
  coreSalts: {
    text: `${hazardOurs} Behaviour: growing whitish spots tell of the core moving; US General Services Administration bronze standard.`,
    sure: 'own choice',
  },
  casting: {
    text: `${hazardOurs} Behaviour: casting faults are stable unless they hold water or let the core leak; terms after Getty 2025, tables 11 and 12.`,
    sure: 'own choice',
  },
  practice: {
    text: `${hazardOurs} Behaviour: common practice, no source.`,
    sure: 'own choice',
  },
} as const satisfies Record<string, Source>;
