import type { Shop } from '../../logbook/fold/fold';
import type { Jar } from '../../logbook/fold/mix/jars';
import { jarAmount } from '../../shop/jar/amount';
import { jarFilm } from '../../shop/jar/film';
import { jarLife } from '../../shop/jar/life';
import { HOUR_MS } from '../../units';
import { JAR_WORDS } from '../../words/mix/jar';
import { type ActionNeeds, type Logged, log, type Said } from '../log';
import { refuseWith } from './mix-refused';

type Typed<Unit extends string> = { readonly text: string; readonly unit: Unit };
const text = (value: number): string => String(Number(value.toPrecision(7)));
const percent = (fraction: number): Typed<'%'> => ({ text: text(fraction * 100), unit: '%' });

interface Share {
  readonly jar: Jar;
  readonly volumeM3: number;
  readonly solids: number;
  readonly densityKgM3: number;
}

/** Pours everything that is left of two jars together into a new one, so that their colours meet in the middle. */
export async function boxJars(needs: ActionNeeds, one: Jar, other: Jar): Logged<'jar-filled'> {
  const shop = needs.logbook.shop.value;
  if (one.product.finish !== other.product.finish) return refuseWith(JAR_WORDS.boxFinishes, 'jar');
  const shares = [one, other].flatMap((jar) => shareOf(jar, shop));
  const unknown = [one, other].find((jar) => shareOf(jar, shop).length === 0);
  if (unknown) return refuseWith(JAR_WORDS.boxAmounts, ['mix', 'jar', unknown.id]);
  return log(needs, 'jar-filled', { ...boxed(shares, shop, needs.now()), jar: needs.newId() });
}

function shareOf(jar: Jar, shop: Shop): Share[] {
  const { leftM3 = 0, volumeSolids, densityKgM3 } = jarAmount(jar, shop);
  return leftM3 > 0 ? [{ jar, volumeM3: leftM3, solids: volumeSolids, densityKgM3 }] : [];
}

function boxed(shares: readonly Share[], shop: Shop, nowMs: number): Omit<Said<'jar-filled'>, 'jar'> {
  const sum = (of: (share: Share) => number): number => shares.reduce((total, share) => total + of(share), 0);
  const volumeM3 = sum((share) => share.volumeM3);
  const solidsM3 = sum((share) => share.volumeM3 * share.solids);
  const pigmentM3 = sum(({ jar, volumeM3: part, solids }) => part * solids * jarFilm(jar).pigment);
  const blend = blendOf(shares);
  const [{ jar: first }] = shares as [Share];
  const contains = [...new Set(shares.flatMap(({ jar }) => jar.contains ?? []))];
  const life = lifeOf(shares, shop, nowMs);
  return {
    name: JAR_WORDS.boxedName(shares.map(({ jar }) => jar.name)),
    product: { finish: first.product.finish, volumeSolids: percent(solidsM3 / volumeM3), solvents: blend },
    thinner: { name: JAR_WORDS.ownMix, blend },
    thinning: { of: 'mix', percent: percent(0) },
    ...(pigmentM3 === 0
      ? {}
      : {
          pigment: {
            shareOfSolids: percent(pigmentM3 / solidsM3),
            shape: shares.some(({ jar }) => jar.pigment?.shape === 'flakes') ? 'flakes' : 'grains',
          },
        }),
    amount: { text: text(volumeM3 * 1e6), unit: 'mL' },
    density: {
      text: text(sum((share) => share.volumeM3 * share.densityKgM3) / volumeM3 / 1000),
      unit: 'g/mL',
    },
    ...(contains.length === 0 ? {} : { contains }),
    ...(life === undefined ? {} : { life }),
    boxedFrom: shares.map(({ jar, volumeM3: part }) => ({
      jar: jar.id,
      volume: { text: text(part * 1e6), unit: 'mL' },
    })),
  };
}

function blendOf(shares: readonly Share[]) {
  const volumes = new Map<string, number>();
  for (const { jar, volumeM3, solids } of shares)
    for (const { id, share } of jarFilm(jar).solvents)
      volumes.set(id, (volumes.get(id) ?? 0) + share * volumeM3 * (1 - solids));
  const whole = [...volumes.values()].reduce((total, volume) => total + volume, 0);
  return [...volumes].map(([solvent, volume]) => ({ solvent, share: volume / whole }));
}

/** The older jar decides how long the two keep: what is left of its life, at 20 C. */
function lifeOf(shares: readonly Share[], shop: Shop, nowMs: number): Said<'jar-filled'>['life'] | undefined {
  const lives = shares.flatMap(({ jar }) => {
    const life = jarLife(jar, shop);
    return life ? [life] : [];
  });
  const [shortest] = lives.sort((a, b) => a.endMs - b.endMs);
  if (!shortest) return undefined;
  const hours = Math.max(0.1, (shortest.endMs - nowMs) / HOUR_MS);
  return { span: { text: text(hours), unit: 'h' }, as: shortest.as };
}
