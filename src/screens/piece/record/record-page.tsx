import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { documented } from '../../../logbook/fold/zones';
import { Tick } from '../../../parts/fields/tick';
import { Button, LinkButton } from '../../../parts/frame/button';
import { Page } from '../../../parts/frame/page';
import { linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { canShare, download, handOverFile } from '../../../reminders/phone/hand-over';
import { RECORD as WORDS } from '../../../words/piece/record';
import { usePiece } from '../use-piece';
import { RecordBody } from './record-body';
import { recordFile } from './record-file';

/** The record of a piece as it goes out, shown before it is shared. */
export function RecordPage() {
  const { shop } = useShop();
  const { piece } = usePiece();
  const body = useRef<HTMLElement>(null);
  const withUndone = useSignal(false);
  const privateCount = documented(piece.id, shop.value).notes.filter(({ isPrivate }) => isPrivate).length;

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
        <Button kind="main" icon="print" onClick={() => print()}>
          {WORDS.print}
        </Button>
        <Button icon="down" onClick={() => void give(download)}>
          {WORDS.save}
        </Button>
        {canShare(new File([''], 'record.html', { type: 'text/html' })) && (
          <Button icon="share" onClick={() => void give(handOverFile)}>
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
      <p class="quiet not-printed">
        {WORDS.preview} {privateCount > 0 && WORDS.privateOut(privateCount)}
      </p>
      <article class="record" ref={body}>
        <RecordBody withUndone={withUndone.value} />
      </article>
    </Page>
  );
}
