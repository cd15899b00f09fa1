import { insightsOf } from '../../actions';
import { w } from '../../words';
import { LinkButton, Section } from '../parts';
import { forecastSentence, trendSentence } from '../parts/trendText';
import { pathTo, useDesk, useQuestion } from '../shell';

const words = w.thenAndNow;

/** What all rounds show together, in a sentence each; the drawing is one touch away. */
export function LongerView({ sculpture }: { readonly sculpture: string }) {
  const insights = useQuestion(insightsOf(useDesk(), sculpture));
  if (!insights) return null;
  const { work, nextRound } = insights.trends;
  const followed = [work.index, work.green, work.bare, work.scale].filter(
    ({ series }) => series.what === 'index' || series.points.some(({ figure }) => figure.value > 0),
  );
  return (
    <Section title={words.longView} lead={words.longViewLead}>
      <ul>
        {followed.map((row) => (
          <li key={row.series.what}>
            {trendSentence(row)} {forecastSentence(row, nextRound)}
          </li>
        ))}
      </ul>
      <div className="not-printed">
        <LinkButton to={pathTo.overTime(sculpture)}>{w.overTime.link}</LinkButton>
      </div>
    </Section>
  );
}
