import type { paperCondition as english } from '../en/paperCondition';
import type { Same } from '../tongue';

export const paperCondition: Same<typeof english> = {
  title: 'Zustandsbericht',
  reader: 'Restaurierung, Akte, Leihgeber, Versicherung',
  what: 'Das Werk',
  maker: 'Urheber',
};
