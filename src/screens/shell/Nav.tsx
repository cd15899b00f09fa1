import { Link, useLocation } from 'wouter';
import { w } from '../../words';
import { CarryIcon, MethodIcon, NextStepsIcon, PlanIcon, SculpturesIcon, SettingsIcon } from '../parts';
import { pathTo } from './paths';

const places = [
  {
    to: pathTo.sculptures(),
    word: w.shell.nav.sculptures,
    Picture: SculpturesIcon,
    under: ['/sculpture', '/welcome', '/cards', '/measure', '/ready'],
  },
  { to: pathTo.nextSteps(), word: w.shell.nav.nextSteps, Picture: NextStepsIcon, under: [] },
  {
    to: pathTo.plan(),
    word: w.shell.nav.plan,
    Picture: PlanIcon,
    under: [
      ...['/due', '/year', '/packing', '/briefing', '/close-down', '/site-plan', '/money', '/budget', '/fund'],
      ...['/products', '/decisions', '/campaign', '/hot-work', '/incidents', '/grounds', '/moves', '/papers'],
    ],
  },
  { to: pathTo.carry(), word: w.shell.nav.carry, Picture: CarryIcon, under: [] },
  { to: pathTo.method(), word: w.shell.nav.method, Picture: MethodIcon, under: [] },
  { to: pathTo.settings(), word: w.shell.nav.settings, Picture: SettingsIcon, under: [] },
] as const;

/** Screens of one work that belong to its plan. */
const planOfWork = /^\/sculpture\/[^/]+\/(?:plan|options|care-day|season|method-sheet|metal|campaigns|inserts|access)$/;

/** The six places of the app: a bar at the foot on a tablet held upright, a rail on the side of the hand where it is wide. */
export function Nav() {
  const [here] = useLocation();
  return (
    <nav className="nav not-printed" aria-label={w.shell.nav.label}>
      {places.map(({ to, word, Picture, under }) => {
        const open = planOfWork.test(here)
          ? to === pathTo.plan()
          : here === to || (to !== '/' && here.startsWith(`${to}/`)) || under.some((u) => here.startsWith(u));
        return (
          <Link key={to} href={to} className="nav-place" aria-current={open ? 'page' : undefined}>
            <Picture />
            <span>{word}</span>
          </Link>
        );
      })}
    </nav>
  );
}
