import { test } from 'vitest';
import { advise } from '../../src/shop/colour/advice';
import { MatchOnPaper, tinterId, WHITE } from '../shop/colour/a-match';
import { processorMs } from './clock';

const ROUNDS = 30;

test('a suggestion over six tinters (aim: under 50 ms on one core; printed, not asserted)', () => {
  const match = new MatchOnPaper(['ochre', 'raw sienna', 'raw umber', 'burnt umber', 'black', 'red oxide'], {
    through: 'bare',
  })
    .read({ as: 'target' }, [['86.5', '-0.6', '14.8']])
    .mix(1, [[WHITE, '200']])
    .read(1, [['95.5', '-0.8', '2.2']])
    .mix(2, [
      [tinterId('ochre'), '2'],
      [tinterId('raw umber'), '0.4'],
    ])
    .read(2, [['90.5', '-0.9', '9.8']])
    .fold();
  const rounds = Array.from({ length: ROUNDS }, () => {
    const startMs = performance.now();
    advise(match, [match], {});
    return performance.now() - startMs;
  });
  const [firstMs = 0] = rounds;
  const tookMs = rounds.sort((one, other) => one - other);
  const [median = 0, worst = 0] = [tookMs[ROUNDS / 2], tookMs.at(-1)];
  const warmMs = processorMs(() => advise(match, [match], {}));
  console.log(
    `suggestion, six tinters, two trials: first ${firstMs.toFixed(1)} ms, median ${median.toFixed(1)} ms, worst ${worst.toFixed(1)} ms; ${warmMs.toFixed(1)} ms of processor time once warm`,
  );
});
