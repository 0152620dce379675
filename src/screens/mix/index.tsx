import type { ComponentType } from 'preact';
import { route } from '../../parts/route';
import { JarPage } from './jar/jar-page';
import { NewJar } from './jar/new-jar';
import { MixHome } from './mix-home';

interface PageOf {
  readonly id: string;
}

/** The pages of the place by the first words of their address; `new` is never an id. */
const PAGES: Record<string, { readonly fresh?: ComponentType; readonly one?: ComponentType<PageOf> }> = {
  jar: { fresh: NewJar, one: JarPage },
};

/** Recipes and jars. */
export function Mix() {
  const [what = '', id = ''] = route.value.rest;
  const pages = PAGES[what];
  if (pages?.fresh && id === 'new') return <pages.fresh />;
  if (pages?.one && id !== '') return <pages.one key={id} id={id} />;
  return <MixHome />;
}
