import { useSignal } from '@preact/signals';
import type { FunctionComponent } from 'preact';
import { useEffect } from 'preact/hooks';
import { Button, LinkButton } from '../../parts/blocks/button';
import { Icon } from '../../parts/blocks/icons';
import { Page } from '../../parts/blocks/page';
import { linkTo } from '../../parts/frame/route';
import { useDoor, useShop } from '../../parts/frame/shop-context';
import { BackupNotice, SetAsideNotice } from '../../parts/kept/storage-notice';
import { BENCH_EMPTY, BENCH_WORDS } from '../../words/bench';
import { LAZY } from '../../words/common';
import { NoticeLine } from './notice-line';
import { Closed, Rows } from './rows';
import { useRows } from './use-rows';

/** What waits, what is ready, and for how long: the whole shop in one picture. On a wide screen `here` is the piece shown beside it. */
export function Bench({ here }: { readonly here?: string | undefined }) {
  return (
    <Page title={BENCH_WORDS.title} aside={<Asides />} keepsPlace>
      <BenchList here={here} />
      <SetAsideNotice />
      <BackupNotice />
    </Page>
  );
}

/** The list itself, with what is due above it. */
function BenchList({ here }: { readonly here?: string | undefined }) {
  const rows = useRows();
  const isAsked = useShop().puttingBack.value !== undefined;
  if (rows.length === 0) return isAsked ? <p class="quiet">{LAZY.loading}</p> : <EmptyBench />;
  const open = rows.filter(({ word }) => word !== 'closed');
  const closed = rows.filter(({ word }) => word === 'closed');
  return (
    <div class="bench">
      <NoticeLine />
      <Rows rows={open} here={here} />
      <div class="acts">
        <LinkButton icon="add" href={linkTo('piece', 'new')}>
          {BENCH_WORDS.start}
        </LinkButton>
        <LinkButton icon="plan" href={linkTo('plan')}>
          {BENCH_WORDS.plan}
        </LinkButton>
        <LinkButton icon="clock" href={linkTo('board')}>
          {BENCH_WORDS.board}
        </LinkButton>
      </div>
      {closed.length > 0 && <Closed rows={closed} />}
    </div>
  );
}

/** The first step, taught; or a look around the demo shop. */
function EmptyBench() {
  const door = useDoor();
  return (
    <div class="empty">
      <EmptyPicture />
      <h2>{BENCH_EMPTY.title}</h2>
      <p>{BENCH_EMPTY.text}</p>
      <div class="acts">
        <LinkButton kind="main" icon="add" href={linkTo('piece', 'new')}>
          {BENCH_WORDS.start}
        </LinkButton>
        {door.name === 'own' && (
          <Button icon="bench" onClick={() => door.enter('demo')}>
            {BENCH_EMPTY.demo}
          </Button>
        )}
      </div>
    </div>
  );
}

const Asides = () => (
  <>
    <a class="page-aside" href={linkTo('plan', 'reminders')} aria-label={BENCH_WORDS.reminders}>
      <Icon name="bell" />
    </a>
    <a class="page-aside" href={linkTo('more')} aria-label={BENCH_WORDS.more}>
      <Icon name="more" />
    </a>
  </>
);

/** The place of the example on an empty bench; the drawing comes after the first frame. */
function EmptyPicture() {
  const Picture = useSignal<FunctionComponent | undefined>(undefined);
  useEffect(() => {
    import('./example').then(
      ({ Example }) => {
        Picture.value = Example;
      },
      () => undefined, // the words beside it say the same
    );
  }, [Picture]);
  const Shown = Picture.value;
  return <div class="empty-picture">{Shown && <Shown />}</div>;
}
