import type { Engine } from './engine';

// What a person does, by words and labels, in an engine that no test library drives fully.
const HELP = `
  const until = async (find, what) => {
    const endMs = Date.now() + 30000;
    for (;;) {
      const found = find();
      if (found) return found;
      if (Date.now() > endMs) throw new Error('waited in vain for ' + what + ' at ' + location.hash + ': ' + document.body.innerText.slice(0, 600));
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  };
  const words = (element) => (element.getAttribute('aria-label') ?? element.innerText ?? '').trim();
  const labelled = (name) => [...document.querySelectorAll('input:not([type=radio]):not([type=file]), textarea, select')].find((one) =>
    [...(one.labels ?? [])].some((label) => label.innerText.trim().startsWith(name)));
  const press = (kind, name) => [...document.querySelectorAll(kind)].find((one) => words(one).startsWith(name) && !one.disabled);
`;

export const byHand = (engine: Engine) => ({
  tap: (name: string) =>
    engine.run(
      `${HELP} (await until(() => press('button, a, label, summary', args[0]), args[0])).click();`,
      name,
    ),
  fill: (label: string, text: string) =>
    engine.run(
      `${HELP} const field = await until(() => labelled(args[0]), args[0]);
       Object.getOwnPropertyDescriptor(Object.getPrototypeOf(field), 'value').set.call(field, args[1]);
       field.dispatchEvent(new Event('input', { bubbles: true })); field.dispatchEvent(new Event('change', { bubbles: true }));`,
      label,
      text,
    ),
  see: (text: string) =>
    engine.run<string>(
      `${HELP} await until(() => document.body.innerText.includes(args[0]), args[0]); return document.body.innerText;`,
      text,
    ),
  /** Whether one of several texts comes first, and which. */
  seeOne: (...texts: readonly string[]) =>
    engine.run<string>(
      `${HELP} return until(() => args.find((text) => document.body.innerText.includes(text)), args.join(' or '));`,
      ...texts,
    ),
  to: (hash: string) =>
    engine.run(`location.hash = args[0]; await new Promise((resolve) => setTimeout(resolve, 300));`, hash),
  isKept: () => engine.run(`${HELP} await until(() => navigator.serviceWorker.controller, 'the worker');`),
  /** Whether this window keeps a Blob in a database of its own. */
  canKeepBlob: () =>
    engine.run<boolean>(
      `const answer = (asked) => new Promise((resolve, reject) => { asked.onsuccess = () => resolve(asked.result); asked.onerror = () => reject(asked.error); });
       const opening = indexedDB.open('a-blob'); opening.onupgradeneeded = () => opening.result.createObjectStore('rows');
       const rows = (await answer(opening)).transaction('rows', 'readwrite').objectStore('rows');
       try { await answer(rows.put(new Blob(['x']), 'x')); return true; } catch { return false; }`,
    ),
  /** What the app would save as a file, in base64. */
  saved: (name: string) =>
    engine.run<string>(
      `${HELP} const kept = URL.createObjectURL.bind(URL); let file;
       URL.createObjectURL = (one) => { file = one; return kept(one); };
       (await until(() => press('button', args[0]), args[0])).click();
       const blob = await until(() => file, 'a file');
       URL.createObjectURL = kept;
       const bytes = new Uint8Array(await blob.arrayBuffer());
       let text = ''; for (const byte of bytes) text += String.fromCharCode(byte);
       return btoa(text);`,
      name,
    ),
  /** Gives a file to the page's own field for files. */
  give: (base64: string, fileName: string, type: string) =>
    engine.run(
      `${HELP} const field = await until(() => document.querySelector('main input[type=file]'), 'a field for files');
       const bytes = Uint8Array.from(atob(args[0]), (one) => one.charCodeAt(0));
       const brought = new DataTransfer(); brought.items.add(new File([bytes], args[1], { type: args[2] }));
       field.files = brought.files; field.dispatchEvent(new Event('change', { bubbles: true }));`,
      base64,
      fileName,
      type,
    ),
});
