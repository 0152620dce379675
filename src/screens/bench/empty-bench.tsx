import { Button, LinkButton } from '../../parts/frame/button';
import { EmptyState } from '../../parts/frame/empty-state';
import { linkTo } from '../../parts/frame/route';
import { useDoor } from '../../parts/frame/shop-context';
import { BENCH_EMPTY, BENCH_WORDS } from '../../words/bench';

const SOLVENT_UM = [1, 2, 4, 22];

const EXAMPLE = {
  describe: BENCH_EMPTY.picture,
  woodLabel: BENCH_EMPTY.wood,
  layers: SOLVENT_UM.map((solventUm, index) => ({
    key: String(index),
    label: BENCH_EMPTY.coat(index + 1),
    dryUm: 12,
    solventUm,
  })),
};

/** The first step, taught; or a look around the demo shop. */
export function EmptyBench() {
  const door = useDoor();
  return (
    <EmptyState title={BENCH_EMPTY.title} text={BENCH_EMPTY.text} picture={EXAMPLE}>
      <LinkButton kind="main" icon="add" href={linkTo('piece', 'new')}>
        {BENCH_WORDS.start}
      </LinkButton>
      {door.name === 'own' && (
        <Button icon="bench" onClick={() => door.enter('demo')}>
          {BENCH_EMPTY.demo}
        </Button>
      )}
    </EmptyState>
  );
}
