import { useSignal } from '@preact/signals';
import type { MixedJarSaid } from '../../actions/mix/fill-from-weigh-up';
import { USUAL_JARS } from '../../actions/mix/usual-jar';
import { LIMITS } from '../../logbook/limits';
import type { Finish } from '../../shop/jar/own-solvents';
import { JAR_FORM } from '../../words/mix/jar';
import { WEIGH_WORDS as WORDS } from '../../words/mix/weigh';
import { TextField } from '../fields/text-field';
import { type Draft, draftProblem, TypedField } from '../fields/typed-field';
import { useUnits } from '../frame/shop-context';

/** Name, life and share kept back of a jar that was mixed, at its finish's usual values. */
export function useJarDraft(startName: string, finish: Finish, kept: Draft<'%'> = { text: '10', unit: '%' }) {
  const usual = USUAL_JARS[finish].life;
  const name = useSignal(startName);
  const life = useSignal<Draft<'h' | 'd' | 'months'>>({ text: usual.text, unit: usual.unit });
  const keepBack = useSignal(kept);
  return {
    name,
    life,
    keepBack,
    as: usual.as,
    isWhole: (): boolean =>
      name.value.trim() !== '' &&
      draftProblem(life.value, LIMITS.life, true) === undefined &&
      draftProblem(keepBack.value, LIMITS.keepBack, true) === undefined,
    said: (): MixedJarSaid => ({
      name: name.value.trim(),
      ...(life.value.text.trim() === '' ? {} : { life: { span: life.value, as: usual.as } }),
      ...(keepBack.value.text.trim() === '' ? {} : { keepBack: keepBack.value }),
    }),
  };
}

interface JarFieldsProps {
  readonly jar: ReturnType<typeof useJarDraft>;
  readonly isTried: boolean;
}

/** What is asked of a jar that was mixed. */
export function JarFields({ jar: { name, life, keepBack, as }, isTried }: JarFieldsProps) {
  const units = useUnits();
  return (
    <>
      <TextField
        label={WORDS.jarName}
        text={name.value}
        onText={(text) => {
          name.value = text;
        }}
        problem={isTried && name.value.trim() === '' ? JAR_FORM.noName : undefined}
      />
      <TypedField
        label={JAR_FORM.life[as](units)}
        limit={LIMITS.life}
        draft={life.value}
        onDraft={(draft) => {
          life.value = draft;
        }}
        hint={JAR_FORM.lifeHint(units)}
        isOptional
        isTried={isTried}
      />
      <TypedField
        label={WORDS.keepBack}
        limit={LIMITS.keepBack}
        draft={keepBack.value}
        onDraft={(draft) => {
          keepBack.value = draft;
        }}
        hint={WORDS.keepBackHint}
        isOptional
        isTried={isTried}
      />
    </>
  );
}
