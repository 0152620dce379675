import { silenceCaution } from '../../actions/air/silence-caution';
import { mayBeSilenced } from '../../logbook/kinds/shop/caution-acts';
import { Button } from '../../parts/blocks/button';
import { CautionRow } from '../../parts/blocks/caution';
import { Fold } from '../../parts/blocks/fold';
import { Page } from '../../parts/blocks/page';
import { useForm } from '../../parts/fields/form/use-form';
import { linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { AIR_WORDS } from '../../words/air/air';
import { CAUTION_WORDS, CAUTIONS, type Caution, WHO_DECIDES } from '../../words/air/cautions';
import { CAUTIONS_PAGE as WORDS } from '../../words/air/room';
import { whenWords } from '../../words/times';

const SHOWN_READS = 20;

/** Every caution, which of them can be put away, and what was confirmed when. */
export function Cautions() {
  const { shop, nowMs } = useShop();
  const reads = shop.value.cautionsRead.slice(-SHOWN_READS).toReversed();
  return (
    <Page title={WORDS.title} backTo={linkTo('air')} backLabel={AIR_WORDS.back}>
      <p>{WHO_DECIDES}</p>
      <ul class="caution-rows">
        {CAUTIONS.map((caution) => (
          <li key={caution.id}>
            <CautionRow caution={caution}>
              {mayBeSilenced(caution.id) && <Silence caution={caution} />}
            </CautionRow>
          </li>
        ))}
      </ul>
      <Fold title={WORDS.log} brief={reads[0] && whenWords(reads[0].atMs, nowMs.value)}>
        {reads.length === 0 && <p>{WORDS.none}</p>}
        <ul class="plain-list">
          {reads.map(({ id, atMs, act, cautions }) => (
            <li key={id}>
              <span class="digits">{whenWords(atMs, nowMs.value)}</span>{' '}
              {WORDS.entry(WORDS.acts[act], cautions.length)}
            </li>
          ))}
        </ul>
      </Fold>
    </Page>
  );
}

function Silence({ caution }: { readonly caution: Caution }) {
  const { shop, needs } = useShop();
  const form = useForm();
  const isSilenced = shop.value.silencedCautions.has(caution.id);
  return (
    <div class="acts">
      <Button
        kind="plain"
        onClick={() => void form.send(true, () => silenceCaution(needs, caution.id, !isSilenced))}
      >
        {isSilenced ? CAUTION_WORDS.show : CAUTION_WORDS.silence}
      </Button>
    </div>
  );
}
