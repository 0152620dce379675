import { Icon, type IconName } from '../../parts/blocks/icons';
import { FilmFace } from '../../parts/film/film-face';
import { linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { type RowStanding, type RowWord, sinceMs } from '../../parts/time/row-standing';
import { WaitBar } from '../../parts/time/wait-bar';
import { DAY_MS } from '../../units';
import { BENCH_WORDS } from '../../words/bench';
import { ROW_WORDS } from '../../words/bench-rows';
import { bandWords, dayWords, sinceWords, spanWords } from '../../words/times';

interface PieceRowProps {
  readonly row: RowStanding;
  /** The thickest film on the bench, so that all faces share one scale. */
  readonly scaleUm: number;
  readonly isHere?: boolean | undefined;
}

const SIGNS: Record<RowWord, readonly [kind: string, icon: IconName]> = {
  ready: ['ready', 'check'],
  perhaps: ['wait', 'perhaps'],
  wait: ['wait', 'clock'],
  hold: ['stop', 'stop'],
  bare: ['quiet', 'add'],
  working: ['quiet', 'waiting'],
  closed: ['quiet', 'check'],
};

/** One piece: its section as its face, its name, its word and time in one line, and its wait on the axis of all. */
export function PieceRow({ row, scaleUm, isHere }: PieceRowProps) {
  const nowMs = useShop().nowMs.value;
  const { piece, word, act, band } = row;
  const [kind, icon] = SIGNS[word];
  const [said, when] = rowWords(row, nowMs);
  return (
    <li class="piece-row">
      <a href={linkTo('piece', piece.id)} aria-current={isHere ? 'true' : undefined}>
        <FilmFace piece={piece} scaleUm={scaleUm} />
        <span class="piece-row-name">{piece.name}</span>
        <span class="state" data-kind={kind}>
          <Icon name={icon} />
          <span>{said}</span>
        </span>
        <span class="piece-row-when digits">{when}</span>
        {band && <WaitBar band={word === 'ready' ? undefined : band} nowMs={nowMs} />}
      </a>
      {word === 'ready' && (act === 'rub-out' || act === 'level-sand') && (
        <a class="row-act" href={linkTo('piece', piece.id, 'sand')} aria-label={`${said}: ${piece.name}`}>
          <Icon name={act === 'rub-out' ? 'rub' : 'sand'} />
        </a>
      )}
    </li>
  );
}

/** What the row says, and what stands at its right. */
export function rowWords(
  { piece, word, act, band, isFailed }: RowStanding,
  nowMs: number,
): readonly [string, (string | undefined)?] {
  const { coats, closedMs = 0 } = piece;
  if (word === 'closed') return [BENCH_WORDS.closed(dayWords(closedMs, nowMs))];
  if (word === 'bare') return [ROW_WORDS.firstCoat, ROW_WORDS.coats(0)];
  if (word === 'working' || !act) return [BENCH_WORDS.computing, ROW_WORDS.coats(coats.length)];
  if (word === 'ready')
    return [ROW_WORDS.ready(act, coats.length + 1), band && sinceWords(sinceMs(piece, band), nowMs)];
  const next = act === 'coat' && coats.length === 0 ? 'first-coat' : act;
  if (word === 'hold' || !band || isFailed)
    return [ROW_WORDS.later(word, next, ''), isFailed ? ROW_WORDS.failed : undefined];
  if (!Number.isFinite(band.likelyMs)) return [ROW_WORDS.later(word, next, ''), ROW_WORDS.overAYear];
  const { day, likely } = bandWords(band, nowMs);
  const said = ROW_WORDS.later(word, next, day === undefined ? likely : `${day} ${likely}`);
  // A day leaves no room beside the word, which says as much.
  if (word === 'perhaps')
    return [said, Math.abs(band.likelyMs - nowMs) < DAY_MS ? ROW_WORDS.tryIt : undefined];
  return [said, ROW_WORDS.inTime(spanWords(band.likelyMs - nowMs))];
}
