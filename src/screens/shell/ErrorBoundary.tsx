import { Component, type ReactNode } from 'react';
import { w } from '../../words';
import { Button, LinkButton, Notice } from '../parts';

interface Props {
  readonly children: ReactNode;
  /** Where we are: going elsewhere clears the fault. */
  readonly place: string;
}

/** What is shown when a screen breaks: a sentence, and the way to carry the survey out. */
export class ErrorBoundary extends Component<Props, { fault: Error | null }> {
  override state = { fault: null as Error | null };

  static getDerivedStateFromError(fault: unknown) {
    return { fault: fault instanceof Error ? fault : new Error(String(fault)) };
  }

  override componentDidUpdate(before: Props) {
    if (before.place !== this.props.place && this.state.fault) this.setState({ fault: null });
  }

  override render() {
    const { fault } = this.state;
    if (!fault) return this.props.children;
    return (
      <div className="page narrow">
        <h1>{w.shell.broken}</h1>
        <Notice
          kind="problem"
          title={w.shell.brokenWhat}
          actions={
            <>
              <Button kind="main" onClick={() => location.reload()}>
                {w.shell.brokenAgain}
              </Button>
              <LinkButton to="/carry">{w.shell.brokenCarry}</LinkButton>
              <LinkButton to="/">{w.shell.brokenBack}</LinkButton>
            </>
          }
        />
        <details>
          <summary>{w.shell.brokenDetail}</summary>
          <p className="small">{fault.message}</p>
        </details>
      </div>
    );
  }
}
