import { glued } from '../../words/glued';

/** Names and values, one under the other. */
export function Facts({ rows }: { readonly rows: readonly (readonly [name: string, value: string])[] }) {
  return (
    <dl class="ledger">
      {rows.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd class="digits">{glued(value)}</dd>
        </div>
      ))}
    </dl>
  );
}
