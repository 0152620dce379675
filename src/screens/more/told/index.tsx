import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { foundIn, type Told, toldSoFar } from '../../../actions/outlook/told-so-far';
import { LinkButton } from '../../../parts/frame/button';
import { EmptyState } from '../../../parts/frame/empty-state';
import { Page, Section } from '../../../parts/frame/page';
import { linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { FINISH_NAMES } from '../../../words/mix/jar';
import { SCORE_WORDS as WORDS } from '../../../words/piece/score';
import { numberWords } from '../../../words/quantities';
import { dateWords } from '../../../words/times';
import { ScorePicture } from './score-picture';

/** Fewer dates than this say nothing. */
const FEWEST = 5;

/** How well the dates have told so far: those that came to be found out, against their bands as they stood. */
export function ToldSoFar() {
  const { shop, estimator } = useShop();
  const told = useSignal<readonly Told[] | 'working' | 'failed'>('working');
  const count = foundIn(shop.value).length;
  useEffect(() => {
    let isWanted = true;
    if (count >= FEWEST)
      estimator
        .then((of) => toldSoFar(shop.peek(), of))
        .then(
          (scores) => {
            if (isWanted) told.value = scores;
          },
          () => {
            if (isWanted) told.value = 'failed';
          },
        );
    return () => {
      isWanted = false;
    };
  }, [count, shop, estimator, told]);
  const scores = typeof told.value === 'string' ? [] : told.value;
  return (
    <Page title={WORDS.title} backTo={linkTo('more')}>
      {count < FEWEST || (typeof told.value !== 'string' && scores.length < FEWEST) ? (
        <EmptyState title={WORDS.tooFew(count, FEWEST)} text={WORDS.tooFewText}>
          <LinkButton kind="main" icon="check" href={linkTo('more', 'cards')}>
            {WORDS.toCards}
          </LinkButton>
        </EmptyState>
      ) : scores.length === 0 ? (
        <p aria-live="polite">{told.value === 'failed' ? WORDS.failed : WORDS.working}</p>
      ) : (
        <Scores scores={scores} />
      )}
    </Page>
  );
}

function Scores({ scores }: { readonly scores: readonly Told[] }) {
  const { nowMs } = useShop();
  const finishes = [...new Set(scores.map(({ finish }) => finish))];
  return (
    <>
      <Section title={WORDS.all}>
        <p>
          <strong>{insideWords(scores)}</strong> {WORDS.promised}
        </p>
        <p>{offWords(scores)}</p>
        <ScorePicture scores={scores} />
        <p class="quiet small">{WORDS.how}</p>
      </Section>
      {finishes.length > 1 && (
        <Section title={WORDS.byFinish}>
          <ul class="lines">
            {finishes.map((finish) => {
              const own = scores.filter((one) => one.finish === finish);
              const name =
                (FINISH_NAMES as Readonly<Record<string, { readonly label: string }>>)[finish]?.label ??
                finish;
              return (
                <li key={finish}>
                  {name}: {insideWords(own)} {own.length >= FEWEST && offWords(own)}
                </li>
              );
            })}
          </ul>
        </Section>
      )}
      <Section title={WORDS.dates}>
        <ul class="lines">
          {scores.map((one) => (
            <li key={`${one.stand} ${one.test}`}>
              {one.name}, {WORDS.tests[one.test as 'gum' | 'smell']}: {WORDS.found}{' '}
              {dateWords(one.lastCoatMs + one.found, nowMs.value)}; {WORDS.said}{' '}
              {dateWords(one.lastCoatMs + one.earliest, nowMs.value)}–
              {dateWords(one.lastCoatMs + one.late, nowMs.value)}
            </li>
          ))}
        </ul>
      </Section>
    </>
  );
}

const isInside = ({ earliest, late, found }: Told): boolean => found >= earliest && found <= late;
const insideWords = (scores: readonly Told[]): string =>
  WORDS.inside(scores.filter(isInside).length, scores.length);

/** How much later or earlier than likely the middle one was found. */
function offWords(scores: readonly Told[]): string {
  const offs = scores.map(({ found, likely }) => found / likely).sort((one, other) => one - other);
  const middle = offs[offs.length >> 1] ?? 1;
  const factor = numberWords(Math.max(middle, 1 / middle), 1);
  return factor === '1' ? WORDS.onTime : middle > 1 ? WORDS.later(factor) : WORDS.earlier(factor);
}
