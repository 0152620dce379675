import type { ComponentChildren } from 'preact';
import { CAUTION_WORDS, type Caution } from '../../words/air/cautions';
import { Icon } from './icons';
import { Notice, type NoticeKind } from './notice';

const LOOK: Record<Caution['kind'], NoticeKind> = {
  fire: 'fire',
  breath: 'caution',
  lead: 'stop',
  skin: 'caution',
};

/** What stops the work looks like it. */
const lookOf = ({ id, kind }: Caution): NoticeKind => (id === 'isocyanate' ? 'stop' : LOOK[kind]);

/** Why, what is usual, and who decides. */
function Grounds({ caution }: { readonly caution: Caution }) {
  return (
    <>
      <p>{caution.why}</p>
      <p>
        <strong>{CAUTION_WORDS.usual}:</strong> {caution.usual}
      </p>
      <p>{caution.decides}</p>
    </>
  );
}

/** One caution: what to do at once, and a tap below it why, what is usual, and who decides. */
export function CautionNotice({ caution }: { readonly caution: Caution }) {
  return (
    <Notice kind={lookOf(caution)} title={caution.title}>
      <p>{caution.text}</p>
      <details class="caution-more">
        <summary>{CAUTION_WORDS.why}</summary>
        <Grounds caution={caution} />
      </details>
    </Notice>
  );
}

/** One caution in a line: its sign and its heading; what to do and why on a tap. What stops the work stands open. */
export function CautionRow({
  caution,
  children,
}: {
  readonly caution: Caution;
  /** What can be done about it. */
  readonly children?: ComponentChildren;
}) {
  const kind = lookOf(caution);
  return (
    <details class="caution-row" data-kind={kind} open={caution.id === 'isocyanate' || undefined}>
      <summary>
        <Icon name={kind} />
        <strong>{caution.title}</strong>
      </summary>
      <p>{caution.text}</p>
      <Grounds caution={caution} />
      {children}
    </details>
  );
}

/** Cautions as one card of lines. */
export const CautionRows = ({ cautions }: { readonly cautions: readonly Caution[] }) => (
  <ul class="caution-rows">
    {cautions.map((caution) => (
      <li key={caution.id}>
        <CautionRow caution={caution} />
      </li>
    ))}
  </ul>
);
