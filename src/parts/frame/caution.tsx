import { CAUTION_WORDS, type Caution } from '../../words/air/cautions';
import { Notice, type NoticeKind } from './notice';

const LOOK: Record<Caution['kind'], NoticeKind> = {
  fire: 'fire',
  breath: 'caution',
  lead: 'stop',
  skin: 'caution',
};

/** One caution: what to do at once, and a tap below it why, what is usual, and who decides. */
export function CautionNotice({ caution }: { readonly caution: Caution }) {
  const isStop = caution.id === 'isocyanate';
  return (
    <Notice kind={isStop ? 'stop' : LOOK[caution.kind]} title={caution.title}>
      <p>{caution.text}</p>
      <details class="caution-more">
        <summary>{CAUTION_WORDS.why}</summary>
        <p>{caution.why}</p>
        <p>
          <strong>{CAUTION_WORDS.usual}:</strong> {caution.usual}
        </p>
        <p>{caution.decides}</p>
      </details>
    </Notice>
  );
}
