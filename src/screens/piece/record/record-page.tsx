import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { dryingStands, ownOutlooks } from '../../../actions/outlook/awaited';
import type { Outlook } from '../../../actions/outlook/outlook';
import type { Shop } from '../../../logbook/fold/fold';
import type { Piece } from '../../../logbook/fold/piece/pieces';
import { documented } from '../../../logbook/fold/piece/zones';
import { Button, LinkButton } from '../../../parts/blocks/button';
import { Page } from '../../../parts/blocks/page';
import { Tick } from '../../../parts/fields/tick';
import { linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { canShare, download, handOverFile } from '../../../reminders/phone/hand-over';
import { RECORD as WORDS } from '../../../words/piece/record';
import { usePiece } from '../use-piece';
import { RecordBody } from './record-body';
import { recordFile } from './record-file';

/** Whether a film of the piece is still being worked out: what went out now would say less than the logbook knows. */
const areComing = (piece: Piece, shop: Shop, outlooks: ReadonlyMap<string, Outlook>): boolean =>
  dryingStands(piece, shop).some(({ id }) => {
    const outlook = ownOutlooks(piece, outlooks).get(id);
    return outlook?.state !== 'failed' && (outlook?.state !== 'ready' || outlook.stale);
  });

/** The record of a piece as it goes out, shown before it is shared. */
export function RecordPage() {
  const { shop, outlooks } = useShop();
  const { piece } = usePiece();
  const body = useRef<HTMLElement>(null);
  const withUndone = useSignal(false);
  const privateCount = documented(piece.id, shop.value).notes.filter(({ isPrivate }) => isPrivate).length;
  const isComing = areComing(piece, shop.value, outlooks.value);

  async function give(how: (file: File) => unknown): Promise<void> {
    if (!body.current) return;
    try {
      const file = await recordFile(body.current, piece.name, WORDS.fileName(piece.name));
      await how(file);
      showToast({ text: WORDS.saved });
    } catch {
      showToast({ text: WORDS.failed });
    }
  }

  return (
    <Page title={WORDS.title} backTo={linkTo('piece', piece.id)}>
      <div class="acts">
        <Button kind="main" icon="print" onClick={() => print()} disabled={isComing}>
          {WORDS.print}
        </Button>
        <Button icon="down" onClick={() => void give(download)} disabled={isComing}>
          {WORDS.save}
        </Button>
        {canShare(new File([''], 'record.html', { type: 'text/html' })) && (
          <Button icon="share" onClick={() => void give(handOverFile)} disabled={isComing}>
            {WORDS.share}
          </Button>
        )}
        <LinkButton icon="edit" href={linkTo('piece', piece.id, 'words')}>
          {WORDS.edit}
        </LinkButton>
      </div>
      <div class="acts not-printed">
        <Tick
          label={WORDS.withUndone}
          isTicked={withUndone.value}
          onTick={(is) => {
            withUndone.value = is;
          }}
        />
      </div>
      <p class="quiet not-printed" role="status">
        {isComing ? WORDS.coming : WORDS.preview} {privateCount > 0 && WORDS.privateOut(privateCount)}
      </p>
      <article class="record" ref={body}>
        <RecordBody withUndone={withUndone.value} />
      </article>
    </Page>
  );
}
