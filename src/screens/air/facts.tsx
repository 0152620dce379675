import { glued } from '../../words/glued';

export interface Fact {
  readonly label: string;
  readonly value: string;
  readonly note?: string | undefined;
}

/** Numbers under their names. */
export function Facts({ rows }: { readonly rows: readonly Fact[] }) {
  return (
    <dl class="facts">
      {rows.map(({ label, value, note }) => (
        <div key={label}>
          <dt>{label}</dt>
          <dd>
            <span class="digits">{glued(value)}</span>
            {note && <small>{glued(note)}</small>}
          </dd>
        </div>
      ))}
    </dl>
  );
}
