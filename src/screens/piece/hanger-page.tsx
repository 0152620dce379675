import { Button } from '../../parts/blocks/button';
import { Page } from '../../parts/blocks/page';
import { QrCode } from '../../parts/blocks/qr-code';
import { addressOf, linkTo } from '../../parts/frame/route';
import { HANGER_WORDS as WORDS } from '../../words/piece/hanger';
import { usePiece } from './use-piece';

const DAY = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium' });

/** A label for the hanger of a piece: its name, and the way back to it. */
export function HangerPage() {
  const { piece } = usePiece();
  return (
    <Page title={WORDS.title} backTo={linkTo('piece', piece.id)}>
      <p class="not-printed">{WORDS.lead}</p>
      <article class="label" aria-label={WORDS.title}>
        <header>
          <h2>{piece.name}</h2>
        </header>
        <QrCode text={addressOf('piece', piece.id)} describe={WORDS.qr(piece.name)} />
        <ul class="label-lines">
          <li>{WORDS.started(DAY.format(piece.startedMs))}</li>
          <li>{WORDS.scan}</li>
        </ul>
      </article>
      <div class="acts">
        <Button kind="main" icon="print" onClick={() => print()}>
          {WORDS.print}
        </Button>
      </div>
    </Page>
  );
}
