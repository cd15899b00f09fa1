import type { ZoneStanding } from '../../actions';

/** One shape per standing, so that the four answers are told apart in grey and in sun. */
const shapes: Readonly<Record<ZoneStanding, string>> = {
  found: 'M12 3a9 9 0 100 18 9 9 0 000-18zM12 8a4 4 0 100 8 4 4 0 000-8z',
  nothing: 'M4 13l5.5 5.5L20 7',
  carried: 'M4 16c2-8 10-9 14-5M18 5v6h-6',
  'not looked': 'M5 5l14 14M19 5L5 19',
  begun: 'M12 3a9 9 0 100 18M12 3a9 9 0 019 9',
  'not yet': 'M12 3a9 9 0 100 18 9 9 0 000-18z',
};

export function StandingMark({ standing }: { readonly standing: ZoneStanding }) {
  return (
    <svg className="standing-mark" width="24" height="24" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      <path d={shapes[standing]} />
    </svg>
  );
}
