import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { type LearnedOf, learnedSoFar } from '../../../actions/outlook/learn/learned-so-far';
import { foundIn, type Told, toldSoFar } from '../../../actions/outlook/learn/told-so-far';
import { LinkButton } from '../../../parts/blocks/button';
import { EmptyState } from '../../../parts/blocks/empty-state';
import { Page, Section } from '../../../parts/blocks/page';
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
export function Score() {
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
  const { shop, outlooks, cards, nowMs } = useShop();
  const learned = learnedSoFar({ shop: shop.value, outlooks: outlooks.value, cards: cards.value });
  const groups = groupsOf(scores);
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
      {learned.length > 0 && (
        <Section title={WORDS.learned}>
          <ul class="lines">
            {learned.map((one) => (
              <li key={one.product}>{learnedWords(one)}</li>
            ))}
          </ul>
        </Section>
      )}
      {groups.length > 0 && (
        <Section title={WORDS.by}>
          <ul class="lines">
            {groups.map(([name, own]) => (
              <li key={name}>
                {name}: {insideWords(own)} {offWords(own)}
              </li>
            ))}
          </ul>
        </Section>
      )}
      <Section title={WORDS.dates}>
        <ul class="lines">
          {scores.map((one) => (
            <li key={`${one.stand} ${one.test}`}>
              {one.name}, {WORDS.tests[one.test as keyof typeof WORDS.tests]}: {WORDS.found}{' '}
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

const nameOf = (finish: string): string =>
  (FINISH_NAMES as Readonly<Record<string, { readonly label: string }>>)[finish]?.label ?? finish;

/** The dates of each finish and of each product, where they are enough to say something and not all there are. */
function groupsOf(scores: readonly Told[]): (readonly [name: string, own: readonly Told[]])[] {
  const groups = new Map<string, { name: string; own: Told[] }>();
  for (const one of scores)
    for (const [key, name] of [
      [one.finish, nameOf(one.finish)],
      [one.product, one.jar],
    ] as const) {
      const group = groups.get(key) ?? { name, own: [] };
      group.own.push(one);
      groups.set(key, { ...group, name });
    }
  const enough = [...groups.values()].filter(({ own }) => own.length >= FEWEST && own.length < scores.length);
  // A finish of one product is said once.
  return enough.flatMap(({ name, own }, i) =>
    enough.slice(0, i).some((one) => one.own.length === own.length && one.own[0] === own[0])
      ? []
      : [[name, own] as const],
  );
}

/** "Gloss dries 1.6 times slower than usual, give or take a factor of 1.3." */
function learnedWords({ jar, slower, within }: LearnedOf): string {
  const factor = numberWords(Math.max(slower, 1 / slower), 1);
  const by = numberWords(within, 1);
  if (factor === '1') return WORDS.asUsual(jar, by);
  return slower > 1 ? WORDS.slower(jar, factor, by) : WORDS.faster(jar, factor, by);
}

/** How much later or earlier than likely the middle one was found. */
function offWords(scores: readonly Told[]): string {
  const offs = scores.map(({ found, likely }) => found / likely).sort((one, other) => one - other);
  const middle = offs[offs.length >> 1] ?? 1;
  const factor = numberWords(Math.max(middle, 1 / middle), 1);
  return factor === '1' ? WORDS.onTime : middle > 1 ? WORDS.later(factor) : WORDS.earlier(factor);
}
