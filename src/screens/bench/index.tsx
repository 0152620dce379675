import { DayEndNotice } from '../../parts/due/day-end-notice';
import { LinkButton } from '../../parts/frame/button';
import { Icon } from '../../parts/frame/icons';
import { Page } from '../../parts/frame/page';
import { linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { BackupNotice } from '../../parts/kept/backup-notice';
import { SetAsideNotice } from '../../parts/kept/storage-notice';
import { BENCH_WORDS } from '../../words/bench';
import { BenchReminders } from './bench-reminders';
import { EmptyBench } from './empty-bench';
import { Groups } from './groups';

/** What may be touched now, next, and not yet. */
export function Bench() {
  const open = useShop();
  const { shop, standings } = open;
  const pieces = [...shop.value.pieces.values()].map((piece) => ({
    piece,
    standing: standings.value.get(piece.id),
  }));
  return (
    <Page title={BENCH_WORDS.title} aside={<Asides />}>
      <SetAsideNotice />
      <DayEndNotice />
      <BackupNotice />
      {pieces.length === 0 ? (
        <EmptyBench />
      ) : (
        <>
          <BenchReminders />
          <Groups pieces={pieces} />
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
        </>
      )}
    </Page>
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
