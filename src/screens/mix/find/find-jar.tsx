import { useSignal } from '@preact/signals';
import { useCallback } from 'preact/hooks';
import { Button } from '../../../parts/blocks/button';
import { Page, Section } from '../../../parts/blocks/page';
import { leadToProblem } from '../../../parts/fields/form/use-form';
import { TextField } from '../../../parts/fields/text-field';
import { goTo, linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { Camera } from '../../../parts/photo/camera';
import { qrReader } from '../../../parts/photo/qr-reader';
import { jarCode, jarIdOf, readCode } from '../../../shop/jar/code';
import { FIND_WORDS as WORDS } from '../../../words/mix/tools';

/** Finds a jar by the code on its lid, typed or seen. */
export function FindJar() {
  const { shop } = useShop();
  const text = useSignal('');
  const problem = useSignal<string | undefined>(undefined);
  const isLooking = useSignal(false);
  const show = (id: string): void => goTo('mix', 'jar', id);
  const showSeen = useCallback((seen: string): boolean => {
    const id = jarIdOf(seen);
    if (id !== undefined) goTo('mix', 'jar', id);
    return id !== undefined;
  }, []);
  function find(event: Event): void {
    event.preventDefault();
    const code = readCode(text.value);
    const jar = [...shop.value.jars.keys()].reverse().find((id) => jarCode(id) === code);
    problem.value = code === undefined ? WORDS.noCode : jar === undefined ? WORDS.unknown : undefined;
    if (jar !== undefined) show(jar);
    else leadToProblem();
  }
  return (
    <Page title={WORDS.title} backTo={linkTo('mix')}>
      <p>{WORDS.lead}</p>
      <form class="stack" noValidate onSubmit={find}>
        <TextField
          label={WORDS.code}
          text={text.value}
          onText={(typed) => {
            text.value = typed;
          }}
          hint={WORDS.codeHint}
          problem={problem.value}
        />
        <Button kind="main" isWide isSubmit>
          {WORDS.find}
        </Button>
      </form>
      <Section title={WORDS.camera}>
        {qrReader() === undefined ? (
          <p>{WORDS.cannotRead}</p>
        ) : isLooking.value ? (
          <Camera
            onText={showSeen}
            looking={WORDS.looking}
            foreign={WORDS.foreign}
            onStop={() => {
              isLooking.value = false;
            }}
          />
        ) : (
          <Button
            onClick={() => {
              isLooking.value = true;
            }}
          >
            {WORDS.camera}
          </Button>
        )}
      </Section>
    </Page>
  );
}
