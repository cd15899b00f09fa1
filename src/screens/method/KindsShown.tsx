import type { Scale } from '../../engine/trade';
import { fixed, number, w } from '../../words';
import { kindsByGroup } from './groups';

const words = w.method;

/** Every kind with its hazard and why; where the collection set its own number, the project's stands beside it. */
export function KindsShown({ scale }: { readonly scale: Scale }) {
  return (
    <table className="plain-table cards kinds">
      <thead>
        <tr>
          <th scope="col">{words.columns.kind}</th>
          <th scope="col">{words.columns.measure}</th>
          <th scope="col">{words.columns.hazard}</th>
          <th scope="col">{words.columns.why}</th>
        </tr>
      </thead>
      {kindsByGroup.map(({ group, kinds }) => (
        <tbody key={group}>
          <tr className="group-row">
            <th colSpan={4} scope="rowgroup">
              {words.group[group]}
            </th>
          </tr>
          {kinds.map((kind) => {
            const hazard = scale.hazardOf(kind.id) ?? kind.hazard;
            return (
              <tr key={kind.id}>
                <th scope="row">
                  {kind.name}
                  <span className="kind-marks">
                    {kind.stop && <span className="chip">{kind.stop === 'always' ? words.stop : words.stopFirst}</span>}
                    {kind.personCheck && <span className="chip">{words.person}</span>}
                  </span>
                </th>
                <td data-head={words.columns.measure}>{words.measure[kind.measure]}</td>
                <td data-head={words.columns.hazard}>
                  <HazardBar hazard={hazard} />
                  {hazard !== kind.hazard && <span className="soft small">{words.own(number(kind.hazard, 2))}</span>}
                </td>
                <td data-head={words.columns.why}>
                  {kind.why}
                  <span className="soft small looks-like"> {kind.looksLike}</span>
                </td>
              </tr>
            );
          })}
        </tbody>
      ))}
    </table>
  );
}

function HazardBar({ hazard }: { readonly hazard: number }) {
  return (
    <span className="hazard">
      <span className="figures strong">{fixed(hazard, 2)}</span>
      <svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
        <rect className="hazard-track" width="100" height="10" />
        <rect className="hazard-bar" width={hazard * 100} height="10" />
      </svg>
    </span>
  );
}
