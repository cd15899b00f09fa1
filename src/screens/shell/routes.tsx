import type { ComponentType, ReactNode } from 'react';
import { nameOf } from '../../engine/record';
import { piece } from '../parts/piece';

/** A thing name inside an address is written with its stroke escaped; one that is not a written address names nothing. */
const whole = (part = ''): string => {
  try {
    return decodeURIComponent(part);
  } catch {
    return '';
  }
};

/**
 * A screen's own code comes when it is first gone to; the service worker keeps it, so it comes offline too. With it
 * come the sentences of what is worked out: the first screens tell no reasons and do without.
 */
const later = <P,>(load: () => Promise<ComponentType<P>>) =>
  piece(async () => {
    const [screen] = await Promise.all([load(), import('../../words/pastStart')]);
    return screen;
  });

const SculptureList = piece(async () => (await import('../sculptures/SculptureListScreen')).SculptureListScreen);
const Welcome = piece(async () => (await import('../sculptures/WelcomeScreen')).WelcomeScreen);
const NewSculpture = later(async () => (await import('../sculptures/NewSculptureScreen')).NewSculptureScreen);
const Sculpture = later(async () => (await import('../sculptures/SculptureScreen')).SculptureScreen);
const EditSculpture = later(async () => (await import('../sculptures/EditSculptureScreen')).EditSculptureScreen);
const Zones = later(async () => (await import('../sculptures/ZonesScreen')).ZonesScreen);
const EditZone = later(async () => (await import('../sculptures/EditZoneScreen')).EditZoneScreen);
const NewZone = later(async () => (await import('../sculptures/NewZoneScreen')).NewZoneScreen);
const Logbook = later(async () => (await import('../logbook')).LogbookScreen);
const ThenAndNow = later(async () => (await import('../then-and-now')).ThenAndNowScreen);
const OverTime = later(async () => (await import('../over-time')).OverTimeScreen);
const Agreement = later(async () => (await import('../agreement')).AgreementScreen);
const Holds = later(async () => (await import('../holds')).HoldsScreen);
const Walk = later(async () => (await import('../look')).WalkScreen);
const EyeCheck = later(async () => (await import('../eye-check')).EyeCheckScreen);
const Place = later(async () => (await import('../place')).PlaceScreen);
const Look = later(async () => (await import('../look')).LookScreen);
const StartRound = later(async () => (await import('../round')).StartRoundScreen);
const Round = later(async () => (await import('../round')).RoundScreen);
const ZoneInRound = later(async () => (await import('../round')).ZoneScreen);
const EndRound = later(async () => (await import('../round')).EndRoundScreen);
const NextSteps = later(async () => (await import('../next-steps')).NextStepsScreen);
const ZoneMap = later(async () => (await import('../zone-map')).ZoneMapScreen);
const Outlining = later(async () => (await import('../zone-map')).OutlineScreen);
const Stations = later(async () => (await import('../stations')).StationsScreen);
const Shots = later(async () => (await import('../stations')).ShotListScreen);
const Cards = later(async () => (await import('../stations')).CardsScreen);
const Photos = later(async () => (await import('../photos')).PhotosScreen);
const Viewfinder = later(async () => (await import('../photos')).ViewfinderScreen);
const Compare = later(async () => (await import('../compare')).CompareScreen);
const Strip = later(async () => (await import('../compare')).StripScreen);
const Measure = later(async () => (await import('../measure')).MeasureScreen);
const Colour = later(async () => (await import('../colour')).ColourScreen);
const Carry = later(async () => (await import('../carry')).CarryScreen);
const Settle = later(async () => (await import('../settle')).SettleScreen);
const Bring = later(async () => (await import('../bring')).BringScreen);
const InStep = later(async () => (await import('../in-step')).InStepScreen);
const Keeping = later(async () => (await import('../keeping')).KeepingScreen);
const PlanPage = later(async () => (await import('../plan')).PlanScreen);
const PlanOfWorkPage = later(async () => (await import('../plan')).PlanOfWorkScreen);
const OptionsPage = later(async () => (await import('../options')).OptionsScreen);
const MoneyRulesPage = later(async () => (await import('../money')).MoneyRulesScreen);
const BudgetPage = later(async () => (await import('../budget')).BudgetScreen);
const FundsPage = later(async () => (await import('../funds')).FundsScreen);
const FundPage = later(async () => (await import('../funds')).FundScreen);
const CareDayPage = later(async () => (await import('../care-day')).CareDayScreen);
const SeasonPage = later(async () => (await import('../care-day')).SeasonScreen);
const MethodSheetPage = later(async () => (await import('../care-day')).MethodSheetScreen);
const LedgerPage = later(async () => (await import('../care-day')).LedgerScreen);
const ProductsPage = later(async () => (await import('../products')).ProductsScreen);
const DecisionsPage = later(async () => (await import('../decisions')).DecisionsScreen);
const DuePage = later(async () => (await import('../due')).DueScreen);
const CampaignsPage = later(async () => (await import('../campaign')).CampaignsScreen);
const CampaignPage = later(async () => (await import('../campaign')).CampaignScreen);
const QuantitiesPage = later(async () => (await import('../campaign')).QuantitiesScreen);
const BidsPage = later(async () => (await import('../campaign')).BidsScreen);
const CompletenessPage = later(async () => (await import('../campaign')).CompletenessScreen);
const ApprovalsPage = later(async () => (await import('../campaign')).ApprovalsScreen);
const LayersPage = later(async () => (await import('../hot-work')).LayersScreen);
const HotDaysPage = later(async () => (await import('../hot-work')).HotDaysScreen);
const HotDayPage = later(async () => (await import('../hot-work')).HotDayScreen);
const InsertsPage = later(async () => (await import('../hot-work')).InsertsScreen);
const AccessPage = later(async () => (await import('../hot-work')).AccessScreen);
const YearPage = later(async () => (await import('../year')).YearScreen);
const PackingPage = later(async () => (await import('../year')).PackingScreen);
const BriefingPage = later(async () => (await import('../year')).BriefingScreen);
const CloseDownPage = later(async () => (await import('../year')).CloseDownScreen);
const SitePlanPage = later(async () => (await import('../year')).SitePlanScreen);
const IncidentsPage = later(async () => (await import('../incidents')).IncidentsScreen);
const GroundsPage = later(async () => (await import('../grounds')).GroundsScreen);
const MovesPage = later(async () => (await import('../moves')).MovesScreen);
const KeptPage = later(async () => (await import('../papers')).KeptWhereScreen);
const PapersPage = later(async () => (await import('../papers')).PapersScreen);
const ConservatorPage = later(async () => (await import('../papers')).ConservatorPageScreen);
const PaperPage = later(async () => (await import('../papers')).PaperScreen);
const Method = later(async () => (await import('../method')).MethodScreen);
const Ready = later(async () => (await import('../ready')).ReadyScreen);
const Help = piece(async () => (await import('../help')).HelpScreen);
const Settings = later(async () => (await import('../settings')).SettingsScreen);

type Ids = Readonly<Record<string, string | undefined>>;

export interface RouteRow {
  readonly path: string;
  readonly show: (ids: Ids) => ReactNode;
  /** On the ladder: navigation, undo and notices of the shell step back; the screen has its own. */
  readonly field?: true;
  /** Name of its page of help, where it is not what `helpNameOf` makes of the path. */
  readonly help?: string;
}

const sculptureOf = (ids: Ids) => nameOf.sculpture(ids.sculpture ?? '');
const roundOf = (ids: Ids) => nameOf.round(ids.round ?? '');
const stationOf = (ids: Ids) => nameOf.station(ids.station ?? '');
const campaignOf = (ids: Ids) => nameOf.campaign(ids.campaign ?? '');
const zoneOf = (ids: Ids) => nameOf.zone(ids.zone ?? '');

/** First that fits is shown. The address carries ids; screens are given names of things. */
export const routes: readonly RouteRow[] = [
  { path: '/', show: () => <SculptureList /> },
  { path: '/welcome', show: () => <Welcome /> },
  { path: '/sculpture/new', show: () => <NewSculpture /> },
  { path: '/sculpture/:sculpture', show: (ids) => <Sculpture sculpture={sculptureOf(ids)} /> },
  { path: '/sculpture/:sculpture/edit', show: (ids) => <EditSculpture sculpture={sculptureOf(ids)} /> },
  { path: '/sculpture/:sculpture/zones', show: (ids) => <Zones sculpture={sculptureOf(ids)} /> },
  { path: '/sculpture/:sculpture/zone/new', show: (ids) => <NewZone sculpture={sculptureOf(ids)} /> },
  {
    path: '/sculpture/:sculpture/zone/:zone',
    show: (ids) => <EditZone key={ids.zone} sculpture={sculptureOf(ids)} zone={zoneOf(ids)} />,
  },
  { path: '/sculpture/:sculpture/logbook', show: (ids) => <Logbook sculpture={sculptureOf(ids)} /> },
  {
    path: '/sculpture/:sculpture/then-and-now/:earlier?/:later?',
    show: (ids) => (
      <ThenAndNow
        sculpture={sculptureOf(ids)}
        earlier={ids.earlier ? nameOf.round(ids.earlier) : undefined}
        later={ids.later ? nameOf.round(ids.later) : undefined}
      />
    ),
  },
  { path: '/sculpture/:sculpture/over-time', show: (ids) => <OverTime sculpture={sculptureOf(ids)} /> },
  {
    path: '/sculpture/:sculpture/agreement/:one?/:other?',
    show: (ids) => (
      <Agreement
        sculpture={sculptureOf(ids)}
        one={ids.one ? nameOf.round(ids.one) : undefined}
        other={ids.other ? nameOf.round(ids.other) : undefined}
      />
    ),
  },
  { path: '/holds', show: () => <Holds /> },
  { path: '/walk', show: () => <Walk />, field: true },
  { path: '/eye-check', show: () => <EyeCheck /> },
  { path: '/place', show: () => <Place /> },
  { path: '/sculpture/:sculpture/look', show: (ids) => <Look sculpture={sculptureOf(ids)} />, field: true },
  { path: '/sculpture/:sculpture/round/start', show: (ids) => <StartRound sculpture={sculptureOf(ids)} /> },
  { path: '/round/:round', show: (ids) => <Round round={roundOf(ids)} />, field: true },
  {
    path: '/round/:round/zone/:zone',
    show: (ids) => <ZoneInRound key={ids.zone} round={roundOf(ids)} zone={zoneOf(ids)} />,
    field: true,
  },
  { path: '/round/:round/end', show: (ids) => <EndRound round={roundOf(ids)} />, field: true },
  {
    path: '/sculpture/:sculpture/map/:elevation?',
    show: (ids) => (
      <ZoneMap sculpture={sculptureOf(ids)} elevation={ids.elevation ? nameOf.elevation(ids.elevation) : undefined} />
    ),
  },
  {
    path: '/sculpture/:sculpture/outline/:elevation',
    show: (ids) => <Outlining sculpture={sculptureOf(ids)} elevation={nameOf.elevation(ids.elevation ?? '')} />,
  },
  { path: '/sculpture/:sculpture/stations', show: (ids) => <Stations sculpture={sculptureOf(ids)} /> },
  { path: '/sculpture/:sculpture/shots', show: (ids) => <Shots sculpture={sculptureOf(ids)} /> },
  {
    path: '/cards/:sculpture?',
    show: (ids) => <Cards sculpture={ids.sculpture ? nameOf.sculpture(ids.sculpture) : undefined} />,
  },
  { path: '/sculpture/:sculpture/photos', show: (ids) => <Photos sculpture={sculptureOf(ids)} /> },
  {
    path: '/sculpture/:sculpture/viewfinder/:station',
    show: (ids) => <Viewfinder sculpture={sculptureOf(ids)} station={stationOf(ids)} />,
    field: true,
  },
  {
    path: '/sculpture/:sculpture/compare/:one?/:other?',
    show: (ids) => (
      <Compare
        sculpture={sculptureOf(ids)}
        one={ids.one ? nameOf.photo(ids.one) : undefined}
        other={ids.other ? nameOf.photo(ids.other) : undefined}
      />
    ),
  },
  {
    path: '/sculpture/:sculpture/strip/:station',
    show: (ids) => <Strip sculpture={sculptureOf(ids)} station={stationOf(ids)} />,
  },
  {
    path: '/measure/:photo/zone/:zone',
    show: (ids) => <Measure photo={nameOf.photo(ids.photo ?? '')} about={zoneOf(ids)} />,
  },
  {
    path: '/measure/:photo/sentinel/:sentinel',
    show: (ids) => <Measure photo={nameOf.photo(ids.photo ?? '')} about={nameOf.sentinel(ids.sentinel ?? '')} />,
  },
  { path: '/sculpture/:sculpture/colour', show: (ids) => <Colour sculpture={sculptureOf(ids)} /> },
  {
    path: '/sculpture/:sculpture/conservator-page',
    show: (ids) => <ConservatorPage sculpture={sculptureOf(ids)} />,
  },
  { path: '/next-steps', show: () => <NextSteps /> },
  { path: '/carry', show: () => <Carry /> },
  { path: '/carry/of/:sculpture', help: 'carry', show: (ids) => <Carry only={sculptureOf(ids)} /> },
  { path: '/carry/settle', show: () => <Settle /> },
  { path: '/carry/bring', show: () => <Bring /> },
  { path: '/carry/in-step', show: () => <InStep /> },
  { path: '/keeping', show: () => <Keeping /> },
  { path: '/papers', show: () => <PapersPage /> },
  { path: '/papers/kept', show: () => <KeptPage /> },
  { path: '/papers/of/:about', help: 'papers', show: (ids) => <PapersPage key={ids.about} of={whole(ids.about)} /> },
  {
    path: '/papers/:sort/:about',
    help: 'paper',
    show: (ids) => <PaperPage key={`${ids.sort} ${ids.about}`} sort={ids.sort ?? ''} about={whole(ids.about)} />,
  },
  { path: '/plan', show: () => <PlanPage /> },
  { path: '/sculpture/:sculpture/plan', show: (ids) => <PlanOfWorkPage sculpture={sculptureOf(ids)} /> },
  { path: '/sculpture/:sculpture/options', show: (ids) => <OptionsPage sculpture={sculptureOf(ids)} /> },
  { path: '/money', show: () => <MoneyRulesPage /> },
  { path: '/budget', show: () => <BudgetPage /> },
  { path: '/funds', show: () => <FundsPage /> },
  { path: '/fund/:fund', show: (ids) => <FundPage fund={nameOf.fund(ids.fund ?? '')} /> },
  { path: '/sculpture/:sculpture/care-day', show: (ids) => <CareDayPage sculpture={sculptureOf(ids)} /> },
  { path: '/sculpture/:sculpture/season', show: (ids) => <SeasonPage sculpture={sculptureOf(ids)} /> },
  { path: '/sculpture/:sculpture/method-sheet', show: (ids) => <MethodSheetPage sculpture={sculptureOf(ids)} /> },
  { path: '/sculpture/:sculpture/metal', show: (ids) => <LedgerPage sculpture={sculptureOf(ids)} /> },
  { path: '/products', show: () => <ProductsPage /> },
  {
    path: '/decisions/:sculpture?',
    show: (ids) => <DecisionsPage sculpture={ids.sculpture ? nameOf.sculpture(ids.sculpture) : undefined} />,
  },
  { path: '/due', show: () => <DuePage /> },
  { path: '/sculpture/:sculpture/campaigns', show: (ids) => <CampaignsPage sculpture={sculptureOf(ids)} /> },
  { path: '/campaign/:campaign', show: (ids) => <CampaignPage campaign={campaignOf(ids)} /> },
  { path: '/campaign/:campaign/quantities', show: (ids) => <QuantitiesPage campaign={campaignOf(ids)} /> },
  { path: '/campaign/:campaign/bids', show: (ids) => <BidsPage campaign={campaignOf(ids)} /> },
  {
    path: '/campaign/:campaign/papers/:of',
    show: (ids) => <CompletenessPage campaign={campaignOf(ids)} of={ids.of ?? 'request'} />,
  },
  { path: '/campaign/:campaign/approvals', show: (ids) => <ApprovalsPage campaign={campaignOf(ids)} /> },
  { path: '/campaign/:campaign/layers', show: (ids) => <LayersPage campaign={campaignOf(ids)} /> },
  { path: '/campaign/:campaign/hot-work', show: (ids) => <HotDaysPage campaign={campaignOf(ids)} /> },
  { path: '/hot-work/:hotDay', show: (ids) => <HotDayPage hotDay={nameOf.hotDay(ids.hotDay ?? '')} /> },
  { path: '/sculpture/:sculpture/inserts', show: (ids) => <InsertsPage sculpture={sculptureOf(ids)} /> },
  { path: '/sculpture/:sculpture/access', show: (ids) => <AccessPage sculpture={sculptureOf(ids)} /> },
  { path: '/year/:year?', show: (ids) => <YearPage year={ids.year} /> },
  { path: '/packing', show: () => <PackingPage /> },
  { path: '/briefing', show: () => <BriefingPage /> },
  { path: '/close-down', show: () => <CloseDownPage /> },
  { path: '/site-plan', show: () => <SitePlanPage /> },
  { path: '/incidents', show: () => <IncidentsPage /> },
  { path: '/grounds', show: () => <GroundsPage /> },
  { path: '/moves', show: () => <MovesPage /> },
  { path: '/method', show: () => <Method /> },
  { path: '/ready', show: () => <Ready /> },
  { path: '/settings', show: () => <Settings /> },
  { path: '/help/:name?', show: (ids) => <Help name={ids.name} /> },
];
