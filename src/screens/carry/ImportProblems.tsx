import type { SurveyFileOpened } from '../../actions';
import { sayReason, w } from '../../words';
import { Notice } from '../parts';

const words = w.carry;

interface ImportProblemsProps {
  readonly file: string;
  readonly found: Extract<SurveyFileOpened, { readonly ok: false }>;
}

/** What is wrong in a file, where, and what to do. Nothing of it was stored. */
export function ImportProblems({ file, found }: ImportProblemsProps) {
  const problems = found.problems.length > 0 ? found.problems.map(({ problem }) => problem) : [found.reason];
  const advice = [...new Set(found.problems.flatMap((one) => (one.advice ? [sayReason(one.advice)] : [])))];
  return (
    <Notice kind="problem" title={words.cannot}>
      <p className="file-name">{file}</p>
      <ul>
        {problems.map((problem, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the list never changes, and one problem may stand there twice
          <li key={i}>{sayReason(problem)}</li>
        ))}
      </ul>
      {advice.map((sentence) => (
        <p key={sentence} className="strong">
          {words.doThis(sentence)}
        </p>
      ))}
      <p>{words.cannotWhat}</p>
    </Notice>
  );
}
