import { useSignal } from '@preact/signals';
import { jarFromTrial, trialBatch } from '../../../actions/match/jar-from-trial';
import { mixFacts } from '../../../actions/mix/mix-facts';
import { USUAL_JARS } from '../../../actions/mix/usual-jar';
import { parseNumber } from '../../../logbook/as-typed';
import type { Trial } from '../../../logbook/fold/piece/matches';
import { LIMITS } from '../../../logbook/limits';
import { Page, Section } from '../../../parts/blocks/page';
import { Send } from '../../../parts/fields/form/form-fields';
import { useForm } from '../../../parts/fields/form/use-form';
import { type Draft, draftProblem, TypedField } from '../../../parts/fields/typed-field';
import { fromHere, linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { JarFields, useJarDraft } from '../../../parts/mix/jar-fields';
import { LackingFields, useLacking } from '../../../parts/mix/lacking-fields';
import { batchMassKg } from '../../../science/mixing/ingredient';
import { lackingIn } from '../../../shop/recipe/lacking';
import { TRIAL_JAR_WORDS as WORDS } from '../../../words/match/trial';
import { JAR_FORM } from '../../../words/mix/jar';
import { gramsText } from '../colour-text';
import { NotHere, type OfMatch, pathOfPage } from '../use-match';

/** The jar in the hand, in which an accepted trial was mixed, becomes a jar of the shop: nothing is weighed again. */
export function TrialJarPage({ match }: OfMatch) {
  const [id] = pathOfPage();
  const trial = match.trials.find((one) => one.id === id);
  return trial && match.accepted?.trial === id ? <JarForm match={match} trial={trial} /> : <NotHere />;
}

const GRAMS = (text: string): Draft<'g'> => ({ text, unit: 'g' });

function JarForm({ match, trial }: OfMatch & { readonly trial: Trial }) {
  const { shop, needs, actions } = useShop();
  const batch = trialBatch(match, trial.number);
  const facts = mixFacts(batch, shop.value);
  const finish = facts.ok ? facts.value.finish : 'nitrocellulose';
  const jar = useJarDraft(match.name, finish);
  const lacking = useLacking(lackingIn(batch, shop.value));
  const left = useSignal(GRAMS(''));
  const thinner = useSignal(GRAMS(''));
  const form = useForm();
  const wholeG = batchMassKg(batch) * 1000;
  async function fill(event: Event): Promise<void> {
    const goOn = fromHere();
    event.preventDefault();
    const isWhole =
      jar.isWhole() &&
      lacking.isWhole() &&
      [left, thinner].every(({ value }) => draftProblem(value, LIMITS.mass, true) === undefined);
    const said = { ...jar.said(), ...gramsOf('leftG', left.value), ...gramsOf('thinnerG', thinner.value) };
    const filled = await form.send(isWhole, () =>
      lacking.before(() => jarFromTrial(needs, match, trial.number, said)),
    );
    if (!filled) return;
    showToast({ text: JAR_FORM.filled(filled.name), onUndo: () => void actions.undo(filled.id) });
    goOn(linkTo('mix', 'jar', filled.jar));
  }
  return (
    <Page
      title={WORDS.title(trial.number)}
      backTo={linkTo('match', match.id, 'trial', trial.id)}
      backLabel={match.name}
    >
      <p>{WORDS.lead(gramsText(wholeG, match.division.si * 1000))}</p>
      <form class="stack" onSubmit={fill} noValidate>
        <TypedField
          label={WORDS.left}
          hint={WORDS.leftHint}
          limit={LIMITS.mass}
          draft={left.value}
          onDraft={(draft) => {
            left.value = draft;
          }}
          isOptional
          isTried={form.isTried.value}
          refused={form.refused.value?.fields['left']}
        />
        <TypedField
          label={WORDS.thinner}
          hint={WORDS.thinnerHint(USUAL_JARS[finish].thinning)}
          limit={LIMITS.mass}
          draft={thinner.value}
          onDraft={(draft) => {
            thinner.value = draft;
          }}
          isOptional
          isTried={form.isTried.value}
        />
        <JarFields jar={jar} isTried={form.isTried.value} />
        <LackingFields form={lacking} isTried={form.isTried.value} />
        <Send form={form} icon="mix">
          {WORDS.fill}
        </Send>
      </form>
      <Section title={WORDS.later}>
        <p>
          <a href={linkTo('mix', 'recipe', match.accepted?.recipe ?? '')}>{WORDS.toRecipe}</a>
        </p>
      </Section>
    </Page>
  );
}

/** Grams under a name; nothing where nothing was typed. */
function gramsOf<Name extends string>(name: Name, { text }: Draft): { readonly [N in Name]?: number } {
  const grams = parseNumber(text);
  return (grams === undefined ? {} : { [name]: grams }) as { readonly [N in Name]?: number };
}
