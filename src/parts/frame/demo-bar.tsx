import { DEMO_BAR } from '../../words/bench';
import { Button } from '../blocks/button';

/** Says on every screen that this shop is invented, and leads out of it with one tap. */
export function DemoBar({ onLeave }: { readonly onLeave: () => void }) {
  return (
    <aside class="demo-line" aria-label={DEMO_BAR.label}>
      <p>
        <strong>{DEMO_BAR.label}.</strong> {DEMO_BAR.text}
      </p>
      <Button onClick={onLeave}>{DEMO_BAR.leave}</Button>
    </aside>
  );
}
