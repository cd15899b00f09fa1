import { type FormEvent, useState } from 'react';
import { switchOnServer } from '../../actions';
import { w } from '../../words';
import { Button, Field } from '../parts';
import { useDesk } from '../shell';
import { UnderWay } from './UnderWay';
import type { useStepping } from './useStepping';

const words = w.inStep;

interface AccessProps {
  /** The name given last time. */
  readonly known?: string;
  readonly label: string;
  readonly stepping: ReturnType<typeof useStepping>;
}

/** Name and password for the folder on the server. */
export function Access({ known = '', label, stepping }: AccessProps) {
  const desk = useDesk();
  const [account, setAccount] = useState(known);
  const [password, setPassword] = useState('');
  const [tried, setTried] = useState(false);
  const missing = (value: string, said: string) => (tried && value.trim() === '' ? said : undefined);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (account.trim() === '' || password === '') return;
    void stepping.go('server', (given) => switchOnServer(desk, { account, password }, given));
  };
  return (
    <form onSubmit={submit} noValidate className="stack not-printed">
      <Field
        label={words.account}
        value={account}
        onChange={setAccount}
        maxLength={200}
        error={missing(account, words.accountMissing)}
      />
      <Field
        label={words.password}
        kind="secret"
        hint={words.passwordHint}
        value={password}
        onChange={setPassword}
        maxLength={500}
        error={missing(password, words.passwordMissing)}
      />
      {stepping.at === 'server' && <UnderWay {...stepping} />}
      <div className="row">
        <Button type="submit" kind="main" disabled={stepping.far !== undefined}>
          {label}
        </Button>
      </div>
    </form>
  );
}
