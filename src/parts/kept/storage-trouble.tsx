import { signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { OpenShop } from '../../actions/shop';
import { isFromNewerApp } from '../../logbook/entry';
import type { Shop } from '../../logbook/fold/fold';
import type { Held } from '../../logbook/logbook';
import { clockSaidMs, isClockBehind, isClockFarOn } from '../../logbook/time/clock';
import { LAZY } from '../../words/common';
import { STORAGE_WORDS } from '../../words/frame/storage';
import { Button, LinkButton } from '../blocks/button';
import { Notice } from '../blocks/notice';
import { linkTo } from '../frame/route';
import { useShop } from '../frame/shop-context';
import { showToast } from '../frame/toast';
import { isYesNo, remembered, type YesNo } from './remembered';

/** Said on every screen while the logbook cannot be read, or something of it cannot be kept. */
export function StorageTrouble() {
  const open = useShop();
  const { failure, held, puttingBack } = open;
  return (
    <>
      {puttingBack.value ? <PuttingBackNotice count={puttingBack.value} /> : <MendedNotice />}
      <NoSecondNotice />
      <ClockNotice />
      {held.value ? <HeldNotice open={open} held={held.value} /> : failure.value && <FailedNotice />}
    </>
  );
}

const PuttingBackNotice = ({ count }: { readonly count: number }) => (
  <Notice kind="note" title={STORAGE_WORDS.puttingBack(count)} isNew>
    <p>{STORAGE_WORDS.puttingBackText}</p>
  </Notice>
);

const mendedRead = signal(0);

function MendedNotice() {
  const { count = 0, isAlone } = { ...useShop().mended.value };
  if (!isAlone && count <= mendedRead.value) return null;
  const read = (): void => {
    mendedRead.value = count;
  };
  return (
    <Notice
      kind={isAlone ? 'stop' : 'note'}
      title={isAlone ? STORAGE_WORDS.alone : STORAGE_WORDS.mended(count)}
      isNew
    >
      <p>{isAlone ? STORAGE_WORDS.aloneText : STORAGE_WORDS.mendedText}</p>
      <div class="acts">
        <LinkButton href={linkTo('more')}>{STORAGE_WORDS.toBackup}</LinkButton>
        {!isAlone && <Button onClick={read}>{STORAGE_WORDS.mendedRead}</Button>}
      </div>
    </Notice>
  );
}

/** Whether this phone has ever had a second copy: a browser that never had a place for one has lost nothing. */
const hadSecond = remembered<YesNo>('coatwait-second', 'no', isYesNo);

/** Said where the second copy was there once, and its place cannot be opened any more; the demo shop never has one. */
function NoSecondNotice() {
  const { which, mended: state } = useShop();
  const mended = which === 'own' ? state.value : undefined;
  const isThere = mended?.copied !== undefined;
  useEffect(() => {
    if (isThere) hadSecond.set('yes');
  }, [isThere]);
  if (!mended || isThere || mended.isAlone || hadSecond.now.value === 'no') return null;
  return (
    <Notice kind="caution" title={STORAGE_WORDS.noSecond} isNew>
      <p>{STORAGE_WORDS.noSecondText}</p>
      <div class="acts">
        <LinkButton href={linkTo('more')}>{STORAGE_WORDS.toBackup}</LinkButton>
      </div>
    </Notice>
  );
}

const isAnswer = (text: string): text is `${number}/${string}` => /^\d+\/[\da-f-]*$/.test(text);
/** When the person last said that the clock is right, and the newest entry then. */
const rightThen = remembered<`${number}/${string}`>('coatwait-clock', '0/', isAnswer);

/** When the clock was last known to be right, as far as the logbook or the person has said, ms since 1970. */
function knownRightMs(shop: Shop): number {
  const [answeredMs, newest] = rightThen.now.value.split('/');
  return newest === shop.newest ? Number(answeredMs) : clockSaidMs(shop);
}

/** Asks whether the clock is right, where it is behind what it said before, or has gone on longer than the bench ever rested. */
function ClockNotice() {
  const { shop, nowMs, needs } = useShop();
  const { newest, entries } = shop.value;
  const rightMs = knownRightMs(shop.value);
  const isBehind = isClockBehind(rightMs, nowMs.value);
  if (!isBehind && !isClockFarOn(entries, rightMs, nowMs.value)) return null;
  const textOf = isBehind ? STORAGE_WORDS.clockText : STORAGE_WORDS.clockFarText;
  const write = (ms: number): string =>
    new Intl.DateTimeFormat('en-GB', {
      timeZone: needs.zone(),
      dateStyle: 'medium',
      timeStyle: 'short',
    }).format(ms);
  const isRight = (): void => {
    rightThen.set(`${needs.now()}/${newest}`);
  };
  return (
    <Notice kind="caution" title={STORAGE_WORDS.clock} isNew>
      <p>{textOf(write(nowMs.value), write(clockSaidMs(shop.value)))}</p>
      <div class="acts">
        <Button onClick={isRight}>{STORAGE_WORDS.clockIsRight}</Button>
      </div>
    </Notice>
  );
}

function FailedNotice() {
  const { failure, reopen } = useShop();
  if (!failure.value) return null;
  return (
    <Notice kind="stop" title={STORAGE_WORDS.failed} isNew>
      <p>{STORAGE_WORDS[failure.value.kind]}</p>
      <div class="acts">
        <Button onClick={() => void reopen()}>{STORAGE_WORDS.retry}</Button>
      </div>
    </Notice>
  );
}

function HeldNotice({ open, held }: { readonly open: OpenShop; readonly held: Held }) {
  const { actions, needs } = open;
  useEffect(() => {
    const warn = (event: Event): void => event.preventDefault();
    addEventListener('beforeunload', warn);
    return () => removeEventListener('beforeunload', warn);
  }, []);
  async function save(): Promise<void> {
    const { download } = await import('../../reminders/phone/hand-over');
    download(await actions.exportBackup());
  }
  async function retry(): Promise<void> {
    const kept = await needs.logbook.keepHeld();
    if (kept.ok) showToast({ text: STORAGE_WORDS.kept });
  }
  return (
    <Notice kind="stop" title={STORAGE_WORDS.held(held.entries.length)} isNew>
      <p>
        {STORAGE_WORDS.heldWhy[held.failure.kind]} {STORAGE_WORDS.heldText}
      </p>
      <div class="acts">
        <Button icon="share" onClick={() => void save()}>
          {STORAGE_WORDS.heldSave}
        </Button>
        <Button onClick={() => void retry()}>{STORAGE_WORDS.retry}</Button>
      </div>
    </Notice>
  );
}

/** Says that something in the logbook could not be read, and leads to it; of what a newer version logged, how it can be. */
export function UnreadEntries() {
  const aside = useShop().setAside.value;
  const newer = aside.filter(({ raw }) => isFromNewerApp(raw)).length;
  const others = aside.length - newer;
  return (
    <>
      {newer > 0 && (
        <Notice kind="note" title={STORAGE_WORDS.newer(newer)}>
          <p>{STORAGE_WORDS.newerText}</p>
          <div class="acts">
            <Button onClick={() => location.reload()}>{LAZY.reload}</Button>
          </div>
        </Notice>
      )}
      {others > 0 && (
        <Notice kind="note" title={STORAGE_WORDS.aside(others)}>
          <p>{STORAGE_WORDS.asideText}</p>
          <div class="acts">
            <LinkButton href={linkTo('more')}>{STORAGE_WORDS.show}</LinkButton>
          </div>
        </Notice>
      )}
    </>
  );
}
