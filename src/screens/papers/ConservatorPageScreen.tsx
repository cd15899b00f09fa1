import { useState } from 'react';
import { addInterpretations, interpretationsOf, sculptureRecordOf } from '../../actions';
import { type SculptureRecord, zonesAt } from '../../engine/record';
import { type ConservatorQuestion, conservatorQuestions } from '../../papers';
import { w, workName, zoneOptions } from '../../words';
import { Button, Field, LinkButton, Notice, Page, Reading, Section } from '../parts';
import { FormActs } from '../parts/FormActs';
import { Select } from '../parts/Select';
import { Thoughts } from '../parts/Thoughts';
import { pathTo, say, useDeed, useDesk, useQuestion, useTyped } from '../shell';
import { NotHere } from '../shell/NotHere';

const words = w.paperConservator;

/** What a conservator wrote on the page, or says beside the work, goes in here: as thoughts under that name, never as findings. */
export function ConservatorPageScreen({ sculpture }: { readonly sculpture: string }) {
  const record = useQuestion(sculptureRecordOf(useDesk(), sculpture));
  if (record === undefined) return <Reading />;
  if (record === null) return <NotHere />;
  return <PageOf record={record} />;
}

interface Answer {
  readonly text: string;
  /** Thing of a zone, or ''. */
  readonly about: string;
}
type Answers = Readonly<Record<ConservatorQuestion, Answer>>;

const noAnswers = Object.fromEntries(
  conservatorQuestions.map((code) => [code, { text: '', about: '' }]),
) as unknown as Answers;

function PageOf({ record }: { readonly record: SculptureRecord }) {
  const desk = useDesk();
  const { thing: sculpture, body } = record.sculpture;
  const thoughts = useQuestion(interpretationsOf(desk, sculpture));
  const [by, setBy] = useState('');
  const [date, setDate] = useState(desk.today());
  const [answers, setAnswers] = useState<Answers>(noAnswers);
  const [tried, setTried] = useState(false);
  const typed = useTyped(['conservator page', undefined, sculpture], {
    by: [by, setBy],
    date: [date, setDate],
    answers: [answers, setAnswers],
  });
  const { run, refused, busy } = useDeed(typed);
  const zones = zonesAt(record, desk.today());
  const given = conservatorQuestions.filter((code) => answers[code].text.trim() !== '');
  const byMissing = by.trim() === '';
  const keep = () => {
    setTried(true);
    if (byMissing || given.length === 0) return;
    return run(
      () =>
        addInterpretations(desk, sculpture, {
          by,
          date,
          source: words.source,
          statements: given.map((code) => ({
            statement: words.statement(words.questions[code].short, answers[code].text.trim()),
            about: answers[code].about,
          })),
        }),
      () => {
        say(words.form.kept(given.length));
        setAnswers(noAnswers);
        setTried(false);
      },
    );
  };
  return (
    <Page
      title={words.form.title}
      over={workName({ body })}
      lead={words.form.lead}
      back={{ to: pathTo.sculpture(sculpture), label: words.form.back }}
    >
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      <Field
        label={words.form.by}
        hint={words.form.byHint}
        value={by}
        onChange={setBy}
        maxLength={200}
        error={tried && byMissing ? words.form.byMissing : undefined}
      />
      <Field label={words.form.date} kind="date" value={date} onChange={setDate} short />
      <Section title={words.answers}>
        {conservatorQuestions.map((code) => (
          <OneAnswer
            key={code}
            ask={words.questions[code].ask}
            answer={answers[code]}
            zones={zones}
            onChange={(answer) => setAnswers({ ...answers, [code]: answer })}
          />
        ))}
        {tried && given.length === 0 && <Notice kind="caution" title={words.form.nothing} />}
      </Section>
      <FormActs>
        <LinkButton to={pathTo.paper('conservator-page', sculpture)}>{words.form.paper}</LinkButton>
        <Button kind="main" disabled={busy} onClick={keep}>
          {words.form.keep}
        </Button>
      </FormActs>
      {thoughts && thoughts.length > 0 && (
        <Section title={words.form.before}>
          <Thoughts
            thoughts={thoughts}
            zones={record.zones.map(({ thing, body: { letter, name } }) => ({ thing, letter, name }))}
          />
        </Section>
      )}
    </Page>
  );
}

interface OneAnswerProps {
  readonly ask: string;
  readonly answer: Answer;
  readonly zones: SculptureRecord['zones'];
  readonly onChange: (answer: Answer) => void;
}

/** Room for one answer; once something stands there, whether it is of one zone. */
function OneAnswer({ ask, answer, zones, onChange }: OneAnswerProps) {
  return (
    <>
      <Field
        label={ask}
        kind="long"
        value={answer.text}
        onChange={(text) => onChange({ ...answer, text })}
        maxLength={3800}
        optional
      />
      {answer.text.trim() !== '' && (
        <Select
          label={words.form.about}
          value={answer.about}
          onChange={(about) => onChange({ ...answer, about })}
          options={[{ value: '', label: words.form.whole }, ...zoneOptions(zones)]}
        />
      )}
    </>
  );
}
