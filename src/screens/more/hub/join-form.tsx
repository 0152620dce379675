import { useSignal } from '@preact/signals';
import { useCallback, useEffect } from 'preact/hooks';
import type { HubTrouble } from '../../../hub/hub-failure';
import { type CodeFault, newSecret, readCode } from '../../../hub/shop-code';
import { Button } from '../../../parts/blocks/button';
import { Notice } from '../../../parts/blocks/notice';
import { leadToProblem } from '../../../parts/fields/form/use-form';
import { TextField } from '../../../parts/fields/text-field';
import { useShop } from '../../../parts/frame/shop-context';
import { speaker } from '../../../parts/kept/hub-here';
import { Camera } from '../../../parts/photo/camera';
import { qrReader } from '../../../parts/photo/qr-reader';
import { HUB_TROUBLE } from '../../../words/frame/hub';
import { HUB_JOIN, HUB_WORDS } from '../../../words/frame/hub-pages';
import { type FoundShop, JoinFound } from './join-found';

const faultWords = (fault: CodeFault): string =>
  fault.kind === 'elsewhere' ? HUB_JOIN.elsewhere(fault.address) : HUB_JOIN.faults[fault.kind];

/** The way into a shop; or why there is none from here. */
export function MayJoin({ code }: { readonly code?: string }) {
  const { which } = useShop();
  if (which === 'demo' || !isSecureContext)
    return (
      <Notice kind="note">
        <p>{which === 'demo' ? HUB_WORDS.demo : HUB_WORDS.notSecure}</p>
      </Notice>
    );
  return <JoinForm code={code} />;
}

/** A code to join with, typed, pasted, scanned or followed; and then what it leads to. */
function JoinForm({ code = '' }: { readonly code?: string | undefined }) {
  const text = useSignal(code);
  const problem = useSignal<string | undefined>(undefined);
  const isAsking = useSignal(false);
  const isScanning = useSignal(false);
  const trouble = useSignal<HubTrouble | 'not-fetched' | undefined>(undefined);
  const found = useSignal<FoundShop | undefined>(undefined);

  const ask = useCallback(async (): Promise<void> => {
    const read = readCode(text.peek(), location.href);
    problem.value = read.ok ? undefined : faultWords(read.failure);
    trouble.value = undefined;
    if (!read.ok) return leadToProblem();
    if (isAsking.peek()) return;
    const { password, secret } = read.value;
    if (secret === undefined) {
      found.value = { how: 'begin', password, secret: newSecret() };
      return;
    }
    isAsking.value = true;
    const looked = await speaker()
      .then(({ lookAtHub }) => lookAtHub({ password, secret }))
      .catch(() => undefined);
    isAsking.value = false;
    if (looked?.ok) found.value = { how: 'join', password, secret, there: looked.value };
    else trouble.value = looked ? looked.failure : 'not-fetched';
  }, [text, problem, trouble, isAsking, found]);
  const seen = useCallback(
    (said: string): boolean => {
      if (!readCode(said, location.href).ok) return false;
      text.value = said;
      isScanning.value = false;
      void ask();
      return true;
    },
    [text, isScanning, ask],
  );
  useEffect(() => {
    if (code) void ask();
  }, [code, ask]);

  if (found.value)
    return (
      <JoinFound
        found={found.value}
        onCancel={() => {
          found.value = undefined;
        }}
      />
    );
  return (
    <>
      <form
        class="stack"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          void ask();
        }}
      >
        <TextField
          label={HUB_JOIN.code}
          hint={HUB_JOIN.codeHint}
          text={text.value}
          problem={problem.value}
          isLong
          onText={(typed) => {
            text.value = typed;
          }}
        />
        <Button kind="main" isWide isSubmit disabled={isAsking.value}>
          {isAsking.value ? HUB_JOIN.looking : HUB_JOIN.go}
        </Button>
      </form>
      {trouble.value && (
        <Notice kind="stop" isNew>
          <p>{trouble.value === 'not-fetched' ? HUB_JOIN.notFetched : HUB_TROUBLE[trouble.value]}</p>
        </Notice>
      )}
      {isScanning.value ? (
        <Camera
          looking={HUB_JOIN.hold}
          foreign={HUB_JOIN.foreign}
          onText={seen}
          onStop={() => {
            isScanning.value = false;
          }}
        />
      ) : (
        qrReader() && (
          <div class="acts">
            <Button
              onClick={() => {
                isScanning.value = true;
              }}
            >
              {HUB_JOIN.scan}
            </Button>
          </div>
        )
      )}
    </>
  );
}
